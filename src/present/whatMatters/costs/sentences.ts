import { wording } from '../../../language/wording';
import type { Decimal } from '../../../core/number';
import type { Cell } from '../../../model/cell';
import type { Lever } from '../../../model/view';
import { lowestOf, type LowestStretch } from '../../../study/lowest';
import { betterWay } from '../../../trade/betterWay';
import { costsTexts } from './texts';
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

/** Whether results are all costs, of which the lowest is the cheapest. */
function areCosts(cells: readonly Cell[]): boolean {
  return cells.every((cell) => betterWay(cell) === 'lower');
}

/** The word for the lowest: `cheapest` for costs. */
export function lowestWord(cells: readonly Cell[]): string {
  return areCosts(cells) ? costsTexts.cheapest : costsTexts.lowest;
}

function todays({ cells, today }: CostsContext, format: Format): Phrase {
  const best = lowestOf(today);
  const cell = best === undefined ? undefined : cells[best];
  if (best === undefined || cell === undefined) return say`None of them can be computed today.`;
  const at = spoken(today[best]!, cell.unit, format);
  return areCosts(cells)
    ? say`${cell.label} is cheapest today, at ${at}.`
    : say`${cell.label} is lowest today, at ${at}.`;
}

function nameOf({ cells }: CostsContext, { curve }: LowestStretch): Phrase {
  return curve === undefined ? plainly(wording`none that can be computed`) : say`${cells[curve]?.label ?? ''}`;
}

/** Where along the input another result becomes the lowest. */
function changes(matter: CostsContext, format: Format): Phrase {
  const {
    lever: { cell: input },
    stretches,
  } = matter;
  const at = (x: Decimal): string => spoken(x, input.unit, format);
  const cheapest = areCosts(matter.cells);
  const [first, ...rest] = stretches ?? [];
  if (first === undefined) return say`${input.label} moves none of them.`;
  if (rest.length === 0) {
    return say`It stays so as ${input.label} moves from ${at(first.from)} to ${at(first.to)}.`;
  }
  if (rest.length > mostSentences) {
    const [from, to, times] = [at(first.from), at(rest.at(-1)!.to), String(rest.length)];
    return cheapest
      ? say`As ${input.label} moves from ${from} to ${to}, the cheapest changes ${times} times; the table tells where.`
      : say`As ${input.label} moves from ${from} to ${to}, the lowest changes ${times} times; the table tells where.`;
  }
  const stays = first.curve === lowestOf(matter.today) && matter.lever.base.lte(first.to);
  const later = rest.flatMap((stretch, i): Phrase => {
    const last = i === rest.length - 1;
    const name = nameOf(matter, stretch);
    return last ? say`, then ${name}` : say`, then ${name} up to ${at(stretch.to)}`;
  });
  if (stays) return say`As ${input.label} rises it stays so up to ${at(first.to)}${later}.`;
  const before = nameOf(matter, first);
  return cheapest
    ? say`As ${input.label} rises, ${before} is cheapest below ${at(first.to)}${later}.`
    : say`As ${input.label} rises, ${before} is lowest below ${at(first.to)}${later}.`;
}

/** Which result is the lowest today, and where along the input another one is. */
export function costsSentence(matter: CostsContext, format: Format): Phrase {
  return sentences(todays(matter, format), changes(matter, format));
}
