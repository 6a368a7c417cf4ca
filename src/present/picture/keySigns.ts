import type { Fill } from './pen';
import type { KeyItem } from './takenPicture';

/** An item of a key without a sign. */
export function keyText(text: string): KeyItem {
  return { text, room: 0 };
}

/** A line as an item of a key. */
export function keyLine(text: string, colour: string, width: number, dash: readonly number[]): KeyItem {
  const room = 44;
  return {
    text,
    room,
    sign: (pen, left, middle) => {
      pen.strokeStyle = colour;
      pen.lineWidth = width;
      pen.setLineDash([...dash]);
      pen.beginPath();
      pen.moveTo(left, middle);
      pen.lineTo(left + room, middle);
      pen.stroke();
      pen.setLineDash([]);
    },
  };
}

/** A filled box as an item of a key. @param share how much of the paper the fill covers */
export function keyBox(text: string, fill: Fill, edge: string, share = 1): KeyItem {
  return {
    text,
    room: 14,
    sign: (pen, left, middle) => {
      pen.fillStyle = fill;
      pen.strokeStyle = edge;
      pen.lineWidth = 1;
      pen.globalAlpha = share;
      pen.fillRect(left + 0.5, middle - 6, 13, 12);
      pen.globalAlpha = 1;
      pen.strokeRect(left + 0.5, middle - 6, 13, 12);
    },
  };
}
