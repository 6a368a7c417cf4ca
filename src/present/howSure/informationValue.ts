import { wording } from '../../language/wording';
import type { Cell } from '../../model/cell';
import { namesAmong } from '../text/entryNames';
import { listed, plainly, say, sentences, type Phrase } from '../text/phrase';
import type { Format } from '../text/numberFormat';
import type { Details } from './drawsFound';
import { spokenInSteps, stepFor } from './rounding';

/** What it is worth to know one input before choosing. */
export interface KnownInputValue {
  readonly cell: Cell;
  readonly name: string;
  readonly value: number;
  readonly error: number;
}

/** A worth within this many standard errors of 0 may be none. */
const noise = 2;

/** The inputs by what knowing them is worth, the highest first, ties in file order. */
export function knownInputValues({ knowingEach }: Details, cells: readonly Cell[]): KnownInputValue[] {
  const nameOf = namesAmong(cells);
  return knowingEach
    .flatMap(({ cell: id, value, error }) => {
      const cell = cells[id];
      return cell === undefined ? [] : [{ cell, name: nameOf(cell), value, error }];
    })
    .sort((a, b) => b.value - a.value || a.cell.id - b.cell.id);
}

/** The inputs whose worth is clearly above 0, given its standard error. */
export function clear(knowing: readonly KnownInputValue[]): KnownInputValue[] {
  return knowing.filter(({ value, error }) => value > 0 && value > noise * error);
}

/** A worth with two significant digits. */
export function worthText(value: number, result: Cell, format: Format): string {
  return spokenInSteps(value, stepFor(value * 10), result.unit, format);
}

/** Which input to measure first, as a sentence. */
export function worthSentence(
  { knowingAll }: Details,
  knowing: readonly KnownInputValue[],
  result: Cell,
  format: Format,
): Phrase {
  const [first, ...rest] = clear(knowing);
  if (!(knowingAll.value > 0)) return say`Nothing is worth measuring for this choice: no draw would change it.`;
  const all = worthText(knowingAll.value, result, format);
  if (first === undefined) {
    const none = plainly(wording`No entry is worth measuring by itself, as far as this many draws can tell.`);
    return sentences(none, say`Knowing all of them would be worth ${all}.`);
  }
  const worth = worthText(first.value, result, format);
  const others = listed(rest.slice(0, 2).map(({ name }) => name));
  return sentences(
    rest.length === 0
      ? say`Find out ${first.name}: knowing it before you choose is worth up to ${worth}.`
      : say`Find out ${first.name} before ${others}: knowing it before you choose is worth up to ${worth}.`,
    say`Knowing everything would be worth ${all}; a trial that costs more does not pay.`,
  );
}
