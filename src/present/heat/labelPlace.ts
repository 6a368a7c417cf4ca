/** A place in pixels. */
interface Place {
  readonly x: number;
  readonly y: number;
}

/** The inside of a plot in pixels. */
interface Box {
  readonly left: number;
  readonly right: number;
  readonly top: number;
  readonly bottom: number;
}

/** At most this many places along a line are tried. */
const tried = 200;

/**
 * A place for a line's label: on the line, far from all marks, and with the whole label inside the plot. Undefined
 * where there is none.
 * @param half half of the label's width and height
 */
export function labelSpot(
  paths: readonly (readonly Place[])[],
  marks: readonly Place[],
  box: Box,
  half: Place,
): Place | undefined {
  const all = paths.flat();
  const some = all.filter((_, k) => k % Math.ceil(all.length / tried) === 0);
  const fits = ({ x, y }: Place): boolean =>
    x - half.x >= box.left && x + half.x <= box.right && y - half.y >= box.top && y + half.y <= box.bottom;
  const middle = { x: (box.left + box.right) / 2, y: (box.top + box.bottom) / 2 };
  // Once the marks are far enough away, a place near the middle is better than one in a corner.
  const worth = (at: Place): number => {
    const far = marks.map((mark) => Math.hypot(at.x - mark.x, (at.y - mark.y) * 2));
    return Math.min(3 * half.x, ...far) - Math.hypot(at.x - middle.x, at.y - middle.y) / 4;
  };
  return some.filter(fits).reduce<Place | undefined>((best, at) => {
    return best === undefined || worth(at) > worth(best) ? at : best;
  }, undefined);
}
