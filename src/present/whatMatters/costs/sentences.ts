import { wording } from '../../../language/wording';
import type { Decimal } from '../../../core/number';
import type { Cell } from '../../../model/cell';
import type { Lever } from '../../../model/view';
import { lowestOf, type LowestStretch } from '../../../study/lowest';
import { plainly, say, sentences, type Phrase } from '../../text/phrase';
import { spoken } from '../../text/spokenNumber';
import type { Format } from '../../text/numberFormat';

/** At most this many changes of the lowest are described one by one. */
const mostSentences = 4;

/** The results side by side, today and along an input. */
export interface CostsContext {
  readonly lever: Lever;
  readonly cells: readonly Cell[];
  /** The results today; NaN where one cannot be computed. */
  readonly today: readonly Decimal[];
  /** Undefined where none of the results depends on the input. */
  readonly stretches: readonly LowestStretch[] | undefined;
}

/** The word for the lowest: `cheapest` for costs. */
export function lowestWord(cells: readonly Cell[]): string {
  return cells.every(({ label }) => /\bcost|\bprice/i.test(label)) ? 'cheapest' : 'lowest';
}

function todays({ cells, today }: CostsContext, word: string, format: Format): Phrase {
  const best = lowestOf(today);
  const cell = best === undefined ? undefined : cells[best];
  if (best === undefined || cell === undefined) return say`None of them can be computed today.`;
  return say`${cell.label} is ${plainly(word)} today, at ${spoken(today[best]!, cell.unit, format)}.`;
}

function nameOf({ cells }: CostsContext, { curve }: LowestStretch): Phrase {
  return curve === undefined ? plainly(wording`none that can be computed`) : say`${cells[curve]?.label ?? ''}`;
}

/** Where along the input another result becomes the lowest. */
function changes(matter: CostsContext, word: string, format: Format): Phrase {
  const {
    lever: { cell: input },
    stretches,
  } = matter;
  const at = (x: Decimal): string => spoken(x, input.unit, format);
  const [first, ...rest] = stretches ?? [];
  if (first === undefined) return say`${input.label} moves none of them.`;
  if (rest.length === 0) {
    return say`It stays so as ${input.label} moves from ${at(first.from)} to ${at(first.to)}.`;
  }
  if (rest.length > mostSentences) {
    return say`As ${input.label} moves from ${at(first.from)} to ${at(rest.at(-1)!.to)}, the ${plainly(word)} changes ${String(rest.length)} times; the table tells where.`;
  }
  const stays = first.curve === lowestOf(matter.today) && matter.lever.base.lte(first.to);
  const later = rest.flatMap((stretch, i): Phrase => {
    const last = i === rest.length - 1;
    const name = nameOf(matter, stretch);
    return last ? say`, then ${name}` : say`, then ${name} up to ${at(stretch.to)}`;
  });
  if (stays) return say`As ${input.label} rises it stays so up to ${at(first.to)}${later}.`;
  return say`As ${input.label} rises, ${nameOf(matter, first)} is ${plainly(word)} below ${at(first.to)}${later}.`;
}

/** Which result is the lowest today, and where along the input another one is. */
export function costsSentence(matter: CostsContext, format: Format): Phrase {
  const word = lowestWord(matter.cells);
  return sentences(todays(matter, word, format), changes(matter, word, format));
}
