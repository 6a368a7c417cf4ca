import { escapedText } from '../table/copied';
import type { Area, Paper } from './paper';
import type { Fill, Pen } from './pen';

/** Paper that becomes an SVG file. */
export interface SvgPaper extends Paper {
  /** Slanted stripes of a colour on a ground, for filling a shape of this paper. */
  readonly hatched: (colour: string, ground: string) => Fill;
  /**
   * The file: SVG 1.1, with its name and its description for those who do not see it (SVG 1.1, 5.4).
   * @param description blank for none
   */
  readonly file: (width: number, height: number, title: string, description: string) => string;
}

/** What an SVG paper needs from where it is made. */
interface SvgTools {
  /** The width of a text in a CSS font, in pixels; 0 where nothing can measure it. */
  readonly measure: (text: string, font: string) => number;
  /** An image as an address that begins with `data:`; blank where none can be made. */
  readonly imageAddress: (pixels: Uint32Array, width: number, height: number) => string;
}

const baselines: Readonly<Record<Pen['textBaseline'], number>> = {
  // Shares of the type's size from the height asked for down to the letters' line.
  alphabetic: 0,
  bottom: -0.22,
  ideographic: -0.2,
  middle: 0.34,
  hanging: 0.74,
  top: 0.78,
};
const anchors: Readonly<Record<Pen['textAlign'], string>> = {
  left: 'start',
  start: 'start',
  center: 'middle',
  right: 'end',
  end: 'end',
};

function short(value: number): string {
  return String(Math.round(value * 100) / 100);
}

function attributes(given: Readonly<Record<string, string | number | undefined>>): string {
  return Object.entries(given)
    .map(([name, value]) =>
      value === undefined ? '' : ` ${name}="${escapedText(typeof value === 'number' ? short(value) : value)}"`,
    )
    .join('');
}

/** `600 13px Some Type, sans-serif` in its parts. */
function fontParts(font: string): { weight: string | undefined; size: number; family: string } {
  const [, weight, size = '13', family = 'sans-serif'] = /^(?:(\d+|bold)\s+)?([\d.]+)px\s+(.*)$/.exec(font) ?? [];
  return { weight, size: Number(size), family };
}

/** What XML 1.0 cannot hold, as control characters, is left out. */
function fitForXml(text: string): string {
  return text.replace(/[\u0000-\u0008\u000b\u000c\u000e-\u001f\ufffe\uffff]|\p{Surrogate}/gu, '');
}

/** A paint as an attribute. On this paper a hatch is a text too; any other pattern is the page's, and unknown here. */
function paintOf(fill: Fill): string {
  return typeof fill === 'string' ? fill : 'none';
}

class SvgPen implements Pen {
  fillStyle: Fill = '#000';
  strokeStyle: Fill = '#000';
  lineWidth = 1;
  lineJoin: Pen['lineJoin'] = 'miter';
  globalAlpha = 1;
  font = '13px sans-serif';
  textAlign: Pen['textAlign'] = 'start';
  textBaseline: Pen['textBaseline'] = 'alphabetic';
  private path = '';
  private dash: readonly number[] = [];

  constructor(
    private readonly write: (element: string) => void,
    private readonly tools: SvgTools,
  ) {}

  beginPath(): void {
    this.path = '';
  }

  closePath(): void {
    this.path += 'Z';
  }

  moveTo(x: number, y: number): void {
    this.path += `M${short(x)} ${short(y)}`;
  }

  lineTo(x: number, y: number): void {
    this.path += `${this.path === '' ? 'M' : 'L'}${short(x)} ${short(y)}`;
  }

  arc(x: number, y: number, radius: number, from: number, to: number): void {
    const at = (angle: number): string =>
      `${short(x + radius * Math.cos(angle))} ${short(y + radius * Math.sin(angle))}`;
    const half = (from + to) / 2;
    const bow = (angle: number): string => `A${short(radius)} ${short(radius)} 0 0 1 ${at(angle)}`;
    this.path += `${this.path === '' ? 'M' : 'L'}${at(from)}${bow(half)}${bow(to)}`;
  }

  fill(): void {
    this.write(`<path${attributes({ d: this.path, ...this.filled() })}/>`);
  }

  stroke(): void {
    if (this.path !== '') this.write(`<path${attributes({ d: this.path, fill: 'none', ...this.stroked() })}/>`);
  }

  setLineDash(dash: number[]): void {
    this.dash = dash;
  }

  fillRect(x: number, y: number, width: number, height: number): void {
    this.write(`<rect${attributes({ x, y, width, height, ...this.filled() })}/>`);
  }

  strokeRect(x: number, y: number, width: number, height: number): void {
    this.write(`<rect${attributes({ x, y, width, height, fill: 'none', ...this.stroked() })}/>`);
  }

  fillText(text: string, x: number, y: number): void {
    this.text(text, x, y, this.filled());
  }

  strokeText(text: string, x: number, y: number): void {
    this.text(text, x, y, { fill: 'none', ...this.stroked() });
  }

  measureText(text: string): { readonly width: number } {
    return { width: this.tools.measure(text, this.font) };
  }

  private opacity(): string | undefined {
    return this.globalAlpha === 1 ? undefined : String(this.globalAlpha);
  }

  private filled(): Record<string, string | undefined> {
    return { fill: paintOf(this.fillStyle), opacity: this.opacity() };
  }

  private stroked(): Record<string, string | number | undefined> {
    return {
      stroke: paintOf(this.strokeStyle),
      'stroke-width': this.lineWidth,
      'stroke-linejoin': this.lineJoin,
      'stroke-dasharray': this.dash.length > 0 ? this.dash.join(' ') : undefined,
      opacity: this.opacity(),
    };
  }

  /** Where the type is not at hand, another is fitted into the same width, so that no text is cut. */
  private text(text: string, x: number, y: number, look: Record<string, string | number | undefined>): void {
    const { weight, size, family } = fontParts(this.font);
    const width = this.tools.measure(text, this.font);
    const given = attributes({
      x,
      y: y + size * baselines[this.textBaseline],
      'text-anchor': anchors[this.textAlign],
      'font-family': family,
      'font-size': size,
      'font-weight': weight,
      textLength: width > 0 ? width : undefined,
      lengthAdjust: width > 0 ? 'spacingAndGlyphs' : undefined,
      ...look,
    });
    this.write(`<text${given}>${escapedText(fitForXml(text))}</text>`);
  }
}

const stripes = 6;

function hatchPattern(id: string, colour: string, ground: string): string {
  const tile = attributes({ id, width: stripes, height: stripes, patternUnits: 'userSpaceOnUse' });
  const lines = [-stripes, 0, stripes]
    .map((shift) => `M${shift - 1} ${stripes + 1}L${shift + stripes + 1} -1`)
    .join('');
  return (
    `<pattern${tile}><rect${attributes({ width: stripes, height: stripes, fill: ground })}/>` +
    `<path${attributes({ d: lines, stroke: colour, 'stroke-width': 1.6 })}/></pattern>`
  );
}

/** A new sheet of paper that becomes an SVG file. */
export function createSvgPaper(tools: SvgTools): SvgPaper {
  const elements: string[] = [];
  const definitions: string[] = [];
  const hatches = new Map<string, string>();
  const write = (element: string): void => {
    elements.push(element);
  };
  const grouped = (given: Record<string, string>, draw: () => void): void => {
    write(`<g${attributes(given)}>`);
    draw();
    write('</g>');
  };
  const within = ({ left, top, right, bottom }: Area, draw: () => void): void => {
    const id = `part-${definitions.length}`;
    const box = attributes({ x: left, y: top, width: right - left, height: bottom - top });
    definitions.push(`<clipPath id="${id}"><rect${box}/></clipPath>`);
    grouped({ 'clip-path': `url(#${id})` }, draw);
  };
  return {
    pen: new SvgPen(write, tools),
    moved: (right, down, draw) => grouped({ transform: `translate(${short(right)} ${short(down)})` }, draw),
    within,
    image: (pixels, width, height, { left, top, right, bottom }) => {
      const address = tools.imageAddress(pixels, width, height);
      if (address === '') return;
      const box = { x: left, y: top, width: right - left, height: bottom - top };
      const given = { ...box, preserveAspectRatio: 'none', 'xlink:href': address };
      write(`<image${attributes(given)}/>`);
    },
    hatched: (colour, ground) => {
      const key = `${colour} ${ground}`;
      const id = hatches.get(key) ?? `hatch-${definitions.length}`;
      if (!hatches.has(key)) definitions.push(hatchPattern(id, colour, ground));
      hatches.set(key, id);
      return `url(#${id})`;
    },
    file: (width, height, title, description) => {
      const spaces = 'xmlns="http://www.w3.org/2000/svg" xmlns:xlink="http://www.w3.org/1999/xlink"';
      const said = description === '' ? '' : `<desc id="said">${escapedText(fitForXml(description))}</desc>`;
      const size = attributes({
        width,
        height,
        viewBox: `0 0 ${width} ${height}`,
        role: 'img',
        'aria-labelledby': 'name',
        'aria-describedby': said === '' ? undefined : 'said',
      });
      const name = `<title id="name">${escapedText(fitForXml(title))}</title>`;
      const head = `<?xml version="1.0" encoding="UTF-8"?>\n<svg ${spaces} version="1.1"${size}>`;
      return `${head}${name}${said}<defs>${definitions.join('')}</defs>\n${elements.join('\n')}\n</svg>\n`;
    },
  };
}
