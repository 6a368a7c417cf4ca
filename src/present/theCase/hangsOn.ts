import { wording } from '../../language/wording';
import { decimal, type Decimal } from '../../core/number';
import type { Unit } from '../../core/unit';
import type { Cell } from '../../model/cell';
import { wordsOf } from '../../model/choices';
import { plainly, say, sentences, type Phrase } from '../text/phrase';
import { endText } from '../text/rangeEnds';
import { unitAfter } from '../text/saidUnits';
import { spoken, spokenWithUnit } from '../text/spokenNumber';
import { figure, words, type DataCell, type DataTable } from '../table/dataTable';
import { commonTexts } from '../text/commonTexts';
import type { Format } from '../text/numberFormat';
import type { DrawsFound } from '../howSure/drawsFound';
import { inSteps, ofHundred, spokenInSteps, stepFor } from '../howSure/rounding';
import { placeText } from '../whatMatters/switching/sentences';
import { turnOf, turnText } from './turn';
import { percentile } from '../howSure/sentences';
import { printedUnit } from '../text/printedUnit';
import type { CaseBudget } from './caseOf';
import type { Closest, TurningInput } from './closest';
import { hangsOnTexts } from './hangsOnTexts';

/** From two up, at the start of a sentence. */
const counts = [
  wording`Two`,
  wording`Three`,
  wording`Four`,
  wording`Five`,
  wording`Six`,
  wording`Seven`,
  wording`Eight`,
  wording`Nine`,
  wording`Ten`,
];

/** What happens as the answer turns, by the net change today. */
const turns = {
  stays: {
    rises: (name: string, at: string, today: string) =>
      say`The answer turns when ${name} rises above ${at}; today it is ${today}.`,
    falls: (name: string, at: string, today: string) =>
      say`The answer turns when ${name} falls below ${at}; today it is ${today}.`,
    reaches: (name: string, at: string, today: string) =>
      say`The answer turns when ${name} comes to ${at}; today it is ${today}.`,
    becomes: (name: string, words: string, today: string) =>
      say`The answer turns when ${name} is ${words}; today it is ${today}.`,
  },
  pays: {
    rises: (name: string, at: string, today: string) =>
      say`It stops paying when ${name} rises above ${at}; today it is ${today}.`,
    falls: (name: string, at: string, today: string) =>
      say`It stops paying when ${name} falls below ${at}; today it is ${today}.`,
    reaches: (name: string, at: string, today: string) =>
      say`It stops paying when ${name} comes to ${at}; today it is ${today}.`,
    becomes: (name: string, words: string, today: string) =>
      say`It stops paying when ${name} is ${words}; today it is ${today}.`,
  },
  costs: {
    rises: (name: string, at: string, today: string) =>
      say`It starts to pay when ${name} rises above ${at}; today it is ${today}.`,
    falls: (name: string, at: string, today: string) =>
      say`It starts to pay when ${name} falls below ${at}; today it is ${today}.`,
    reaches: (name: string, at: string, today: string) =>
      say`It starts to pay when ${name} comes to ${at}; today it is ${today}.`,
    becomes: (name: string, words: string, today: string) =>
      say`It starts to pay when ${name} is ${words}; today it is ${today}.`,
  },
} as const;

function todayText({ cell, base }: TurningInput, format: Format): string {
  return spokenWithUnit(endText(base, cell, format), cell.unitText);
}

/** How many inputs change the answer within their range. */
function insideText(inside: number): Phrase {
  if (inside === 0) return say`No entry by itself turns it within its own range.`;
  if (inside === 1) return say`One entry by itself turns it within its own range.`;
  return plainly(wording`${counts[inside - 2] ?? inside} entries, each by itself, turn it within their own range.`);
}

/** Which input changes the answer soonest. */
export function turningSentence(
  { hinges, inside }: Closest,
  { netChange }: CaseBudget,
  nameOf: (cell: Cell) => string,
  format: Format,
): Phrase {
  const [first] = hinges;
  if (first === undefined) {
    return say`No entry by itself can turn the answer, however wrong it is within the range looked at.`;
  }
  const told = turns[netChange.isZero() ? 'stays' : netChange.gt(0) ? 'pays' : 'costs'];
  return sentences(
    told[turnOf(first)](nameOf(first.cell), turnText(first, format), todayText(first, format)),
    inside === undefined ? [] : insideText(inside),
  );
}

/** How an input's turning point compares with its range. */
export function rangeText({ cell, inRange }: TurningInput, format: Format): string {
  if (cell.range === undefined || inRange === undefined) return wording`no range`;
  const [low, high] = [endText(cell.range.low, cell, format), endText(cell.range.high, cell, format)];
  return inRange ? wording`within ${low} to ${high}` : wording`outside ${low} to ${high}`;
}

/** The range and the unit below a label, where there is no room for them in columns. */
export function besideLabel(hinge: TurningInput, format: Format): string {
  const [range, unit] = [rangeText(hinge, format), unitAfter('', hinge.cell.unitText)];
  return hinge.inRange === undefined ? [unit, range].filter(Boolean).join(', ') : `${range} ${unit}`.trim();
}

/** Today's number and the one at which the answer changes, as columns show them. */
export function turningTexts(hinge: TurningInput, format: Format): { today: string; turns: string; unit: string } {
  const { cell, base, value } = hinge;
  const at = wordsOf(cell, value) ?? format.value(value, cell.unit);
  return { today: endText(base, cell, format), turns: placeText(hinge, at), unit: unitAfter(at, cell.unitText) };
}

/** The turning points as a table; other programs have the ends of the range in columns of their own. */
export function turningTable(
  hinges: readonly TurningInput[],
  nameOf: (cell: Cell) => string,
  format: Format,
): DataTable {
  const ends = [hangsOnTexts.rangeFrom, hangsOnTexts.rangeTo].map((name) => ({ name, aside: true }));
  const shown = [commonTexts.entry, commonTexts.today, hangsOnTexts.turnsAt, commonTexts.itsRange];
  return {
    caption: hangsOnTexts.caption,
    columns: [...shown.map((name) => ({ name })), ...ends],
    rows: hinges.map((hinge) => {
      const { cell, base, value } = hinge;
      const texts = turningTexts(hinge, format);
      const end = (number: Decimal | undefined): DataCell =>
        number === undefined ? words('') : figure(endText(number, cell, format), number);
      return [
        figure(nameOf(cell), undefined, printedUnit(cell.unitText)),
        figure(texts.today, base),
        { ...figure(texts.turns, value), alone: wordsOf(cell, value) ?? format.value(value, cell.unit) },
        words(rangeText(hinge, format)),
        end(cell.range?.low),
        end(cell.range?.high),
      ];
    }),
  };
}

function netClause(low: number, high: number, unit: Unit, format: Format): Phrase {
  if (low === high) return say`the net change is ${spoken(decimal(low), unit, format)}`;
  const step = stepFor(high - low);
  const [from, to] = [inSteps(low, step, format), spokenInSteps(high, step, unit, format)];
  return say`in ${wording`90 of 100`} the net change lies between ${from} and ${to}`;
}

/** How sure the answer is, from draws of all ranges at once; blank where there are none. */
export function oddsSentence(
  { spread, failed, done, certain }: DrawsFound,
  { unit }: CaseBudget,
  format: Format,
): Phrase {
  if (certain) return say`No entry with a range touches it, so there is nothing to be unsure of.`;
  if (spread === undefined) return [];
  const { above, equal } = spread.main;
  const [low, high] = [percentile(spread.main, 5), percentile(spread.main, 95)];
  const without =
    failed === 0 ? [] : say`In ${ofHundred(failed / done)} it cannot be computed; this speaks of the rest.`;
  const lies = netClause(low, high, unit, format);
  const odds =
    equal >= 0.005
      ? say`Drawn from all ranges at once, it pays in ${ofHundred(above)}, comes to the same in ${ofHundred(equal)}; ${lies}.`
      : say`Drawn from all ranges at once, it pays in ${ofHundred(above)}; ${lies}.`;
  return sentences(odds, without);
}
