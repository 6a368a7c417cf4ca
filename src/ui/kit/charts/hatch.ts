const side = 6;

/** Patterns made so far, by colours; a page needs only a few. */
const made = new Map<string, CanvasPattern>();

/** A pattern of slanted stripes of a colour on a ground; the plain colour where no pattern can be made. */
export function hatch(colour: string, ground: string): string | CanvasPattern {
  const scale = Math.max(1, Math.round(devicePixelRatio));
  const key = `${colour} ${ground} ${scale}`;
  const pattern = made.get(key) ?? stripes(colour, ground, scale);
  if (pattern === undefined) return colour;
  made.set(key, pattern);
  return pattern;
}

function stripes(colour: string, ground: string, scale: number): CanvasPattern | undefined {
  const tile = document.createElement('canvas');
  tile.width = tile.height = side * scale;
  const pen = tile.getContext('2d');
  if (pen === null) return undefined;
  pen.scale(scale, scale);
  pen.fillStyle = ground;
  pen.fillRect(0, 0, side, side);
  pen.strokeStyle = colour;
  pen.lineWidth = 1.6;
  for (const shift of [-side, 0, side]) {
    pen.beginPath();
    pen.moveTo(shift - 1, side + 1);
    pen.lineTo(shift + side + 1, -1);
    pen.stroke();
  }
  const pattern = pen.createPattern(tile, 'repeat') ?? undefined;
  pattern?.setTransform(new DOMMatrix().scale(1 / scale));
  return pattern;
}
