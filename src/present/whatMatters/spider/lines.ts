import { isQuantity } from '../../../model/cell';
import type { Question } from '../../../model/response';
import type { Lever } from '../../../model/view';
import { spiderLine, type SpiderLine } from '../../../study/spider';
import type { ShownBar } from '../tornado/bars';

/** At most this many lines can be told apart. */
const most = 5;

/** The quantities with the longest bars. Those in `atZero` are 0 today and have no line: no change is a share of 0. */
export interface Tops {
  readonly levers: readonly Lever[];
  readonly atZero: readonly Lever[];
}

/** @param bars in order, the longest first */
export function topsOf(bars: readonly ShownBar[]): Tops {
  const levers: Lever[] = [];
  const atZero: Lever[] = [];
  for (const { lever, swing } of bars) {
    if (levers.length === most) break;
    if (swing.isZero() || swing.isNaN() || !isQuantity(lever.cell)) continue;
    (lever.base.isZero() ? atZero : levers).push(lever);
  }
  return { levers, atZero };
}

/** The question whose spider lines are drawn, and the inputs. */
export interface SpiderRequest extends Tops {
  readonly question: Question;
}

/** The lines computed so far, the steepest first. */
export interface FoundLines {
  readonly lines: readonly SpiderLine[];
  readonly exact: boolean;
}

/** Lines by the size of their slope, the steepest first, lines with an unknown end last. */
function steepestFirst(lines: readonly SpiderLine[]): SpiderLine[] {
  const size = ({ slope }: SpiderLine): number => (slope.isNaN() ? -1 : slope.abs().toNumber());
  return [...lines].sort((a, b) => size(b) - size(a));
}

/** The lines in float64, then exactly. */
export function* spiderLines({ question, levers }: SpiderRequest): Generator<FoundLines | undefined, void> {
  for (const exact of [false, true]) {
    const lines: SpiderLine[] = [];
    for (const lever of levers) {
      const line = yield* spiderLine(question, lever, !exact);
      if (line !== undefined) lines.push(line);
    }
    yield { lines: steepestFirst(lines), exact };
  }
}
