import { decimal, type Decimal } from '../../core/number';
import type { Question } from '../../model/response';
import { uncertain, type Lever } from '../../model/view';
import { medianOf } from '../../study/distribution';
import { namesAmong } from '../text/entryNames';
import { listed, say, sentences, type Phrase } from '../text/phrase';
import { spoken } from '../text/spokenNumber';
import { endText } from '../text/rangeEnds';
import type { Format } from '../text/numberFormat';

/** A median this near to today's number, as a share of the range, counts as equal to it. */
const near = 0.01;
/** At most this many names in a list; of more, the number. */
const mostNames = 3;

type Ranged = Lever & { readonly range: NonNullable<Lever['range']> };

/** The inputs that are drawn. */
function drawn(question: Question): Ranged[] {
  return uncertain(question.view).flatMap((lever) =>
    lever.range !== undefined && question.response([lever]).depends ? [{ ...lever, range: lever.range }] : [],
  );
}

function isOutside({ base, range }: Ranged): boolean {
  return base.lt(range.low) || base.gt(range.high);
}

/** Whether the range's shape has its mode at today's number. */
function hasPeakToday({ range }: Ranged): boolean {
  return range.shape === 'triangular' || range.shape === 'pert';
}

/** The end of its range at which an input stands today, so that all its draws lie to one side of today's number. */
function endToday(lever: Ranged): 'low' | 'high' | undefined {
  const { base, range } = lever;
  if (!hasPeakToday(lever) || isOutside(lever)) return undefined;
  const share = base.minus(range.low).dividedBy(range.high.minus(range.low));
  if (share.lte(near)) return 'low';
  return share.gte(1 - near) ? 'high' : undefined;
}

/** Whether a shape that does not use today's number has its median elsewhere. */
function isElsewhere(lever: Ranged): boolean {
  const { base, range } = lever;
  if (hasPeakToday(lever) || isOutside(lever)) return false;
  const span = range.high.minus(range.low).toNumber();
  return Math.abs(medianOf(range, base) - base.toNumber()) > near * span;
}

function outside(levers: readonly Ranged[], name: (lever: Lever) => string): Phrase {
  if (levers.length === 0) return [];
  const names = listed(levers.map(name), mostNames);
  return levers.length === 1
    ? say`${names} stands outside its range today, and the draws keep to the range: they are not about today’s number.`
    : say`${names} stand outside their ranges today, and the draws keep to the ranges: they are not about today’s numbers.`;
}

function atAnEnd(levers: readonly Ranged[], name: (lever: Lever) => string): Phrase {
  const [first] = levers;
  if (first === undefined) return [];
  const names = listed(levers.map(name), mostNames);
  if (levers.length > 1) {
    return say`${names} stand at an end of their ranges today: the draws lie to one side of them.`;
  }
  return endToday(first) === 'low'
    ? say`${names} stands at the low end of its range today: the draws lie above it.`
    : say`${names} stands at the high end of its range today: the draws lie below it.`;
}

function elsewhere(levers: readonly Ranged[], name: (lever: Lever) => string, format: Format): Phrase {
  const [first, ...rest] = levers;
  if (first === undefined) return [];
  const { cell, base, range } = first;
  const middle: Decimal = decimal(Number(medianOf(range, base).toPrecision(12)));
  const [drawnRound, today] = [spoken(middle, cell.unit, format), endText(base, cell, format)];
  const others = listed(rest.map(name), mostNames);
  if (rest.length === 0) {
    return say`${name(first)} is drawn round ${drawnRound}, not round today’s ${today}, for so its range is shaped.`;
  }
  return rest.length === 1
    ? say`${name(first)} is drawn round ${drawnRound}, not round today’s ${today}, for so its range is shaped; so is ${others}, round another.`
    : say`${name(first)} is drawn round ${drawnRound}, not round today’s ${today}, for so its range is shaped; so are ${others}, round others.`;
}

/** Which draws are not centred on today's numbers, and why. */
export function todaySentence(question: Question, format: Format): Phrase {
  const levers = drawn(question);
  const nameOf = namesAmong(question.view.model.cells);
  const name = ({ cell }: Lever): string => nameOf(cell);
  return sentences(
    outside(levers.filter(isOutside), name),
    atAnEnd(
      levers.filter((lever) => endToday(lever) !== undefined),
      name,
    ),
    elsewhere(levers.filter(isElsewhere), name, format),
  );
}
