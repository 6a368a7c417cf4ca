/** What fills or strokes a shape: a CSS colour, or a pattern that the page has made. */
export type Fill = string | object;

/**
 * What a picture is drawn with: the part of the HTML canvas's 2D context that pictures use. As an interface it needs no
 * page, so a picture can be drawn on anything that has these methods.
 */
export interface Pen {
  fillStyle: Fill;
  strokeStyle: Fill;
  lineWidth: number;
  lineJoin: 'bevel' | 'miter' | 'round';
  globalAlpha: number;
  font: string;
  textAlign: 'center' | 'end' | 'left' | 'right' | 'start';
  textBaseline: 'alphabetic' | 'bottom' | 'hanging' | 'ideographic' | 'middle' | 'top';
  beginPath(): void;
  closePath(): void;
  moveTo(x: number, y: number): void;
  lineTo(x: number, y: number): void;
  arc(x: number, y: number, radius: number, from: number, to: number): void;
  fill(): void;
  stroke(): void;
  setLineDash(dash: number[]): void;
  fillRect(x: number, y: number, width: number, height: number): void;
  strokeRect(x: number, y: number, width: number, height: number): void;
  fillText(text: string, x: number, y: number): void;
  strokeText(text: string, x: number, y: number): void;
  measureText(text: string): { readonly width: number };
}
