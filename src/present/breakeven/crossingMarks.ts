import type { Searched } from './searched';
import type { Format } from '../text/numberFormat';
import type { CrossingMark } from './picture';
import type { ResultLine, ResultLines } from '../results/resultLines';
import type { LineSelection, Targets } from './curve/quickStudy';
import type { Moved } from './moved';

/** At most this many marks are labelled, for lack of room. */
const labelled = 6;

/** To see whether a line jumps, it is computed this far to either side, as a share of the input. */
const beside = 1e-6;

/** The height at which both plans meet; where one of them jumps there, the height of the other. */
function meetingHeight({ plan, against }: ResultLines, x: number): number {
  const reach = Math.max(Math.abs(x), Number.MIN_VALUE) * beside;
  const jump = (line: ResultLine): number => Math.abs(line.float(x + reach) - line.float(x - reach));
  const other = against ?? plan;
  return (jump(other) <= jump(plan) ? other : plan).float(x);
}

/** The marks of the chart: where a line meets its target, and where both plans meet. */
export function crossingMarks(
  found: Searched,
  lines: ResultLines,
  targets: Targets,
  { cell }: Moved,
  selection: LineSelection,
  format: Format,
): CrossingMark[] {
  const names = [...new Set([selection.leading, ...selection.shown])];
  return names.flatMap((line) => {
    const crossings = found[line]?.crossings ?? [];
    const leading = line === selection.leading;
    const meeting = !selection.shown.includes(line);
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
