import type { Format } from '../format';
import type { CrossingMark } from './breakevenPicture';
import type { Searched } from './exactSearch';
import type { Line, Lines } from './lines';
import type { Looked, Targets } from './quickStudy';
import type { Moved } from './answer';

/** Marks that the chart has room to label. */
const labelled = 6;

/** How far beside a place a line is looked at to see whether it jumps there, as a share of the input. */
const beside = 1e-6;

/** How high both plans stand where they meet: where one of them jumps, that is the height of the other. */
function meetingHeight({ plan, against }: Lines, x: number): number {
  const reach = Math.max(Math.abs(x), Number.MIN_VALUE) * beside;
  const jump = (line: Line): number => Math.abs(line.float(x + reach) - line.float(x - reach));
  const other = against ?? plan;
  return (jump(other) <= jump(plan) ? other : plan).float(x);
}

/** The crossings of the lines as marks: those of a line at its target, and where both plans meet. */
export function crossingMarks(
  found: Searched,
  lines: Lines,
  targets: Targets,
  { cell }: Moved,
  looked: Looked,
  format: Format,
): CrossingMark[] {
  const names = [...new Set([looked.leading, ...looked.shown])];
  return names.flatMap((line) => {
    const crossings = found[line]?.crossings ?? [];
    const leading = line === looked.leading;
    const meeting = !looked.shown.includes(line);
    return crossings.map(({ value }): CrossingMark => {
      const x = value.toNumber();
      return {
        x,
        y: meeting ? meetingHeight(lines, x) : targets[line].toNumber(),
        text: leading && crossings.length <= labelled ? format.value(value.toSignificantDigits(10), cell.unit) : '',
        line,
        leading,
      };
    });
  });
}
