const side = 6;

/** Slanted stripes of a colour on a ground, for a canvas; the colour itself where no pattern can be made. */
export function hatch(colour: string, ground: string): string | CanvasPattern {
  const tile = document.createElement('canvas');
  const scale = Math.max(1, Math.round(devicePixelRatio));
  tile.width = tile.height = side * scale;
  const pen = tile.getContext('2d');
  if (pen === null) return colour;
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
  const pattern = pen.createPattern(tile, 'repeat');
  pattern?.setTransform(new DOMMatrix().scale(1 / scale));
  return pattern ?? colour;
}
