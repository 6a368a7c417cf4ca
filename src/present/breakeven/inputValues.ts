import { wording } from '../../language/wording';
import type { Decimal } from '../../core/number';
import type { Cell } from '../../model/cell';
import { decimalsFor } from '../text/digits';
import { inPerCent } from '../text/inPerCent';
import type { Format } from '../text/numberFormat';
import { say, type Phrase } from '../text/phrase';
import { isShare } from '../text/share';
import { spoken, spokenWithUnit } from '../text/spokenNumber';

/** A crossing rounded to ten digits: the search may end very slightly beside a short number. */
function tidied(value: Decimal): Decimal {
  return value.toSignificantDigits(10);
}

/** A change in per cent of a number; blank where that number is 0. */
export function percentOf(change: Decimal, base: Decimal, format: Format): string {
  if (base.isZero()) return '';
  const percent = change.dividedBy(base.abs()).times(100);
  return inPerCent(format.full(percent.toDecimalPlaces(percent.abs().gte(100) ? 0 : 1)));
}

/** Writes values of the input. Of two in one phrase only the second has the unit. */
export class InputValues {
  constructor(
    private readonly cell: Cell,
    private readonly format: Format,
  ) {}

  one(value: Decimal): string {
    return spoken(tidied(value), this.cell.unit, this.format);
  }

  bare(value: Decimal): string {
    return this.format.value(tidied(value), this.cell.unit);
  }

  between(a: Decimal, b: Decimal): Phrase {
    return say`between ${this.bare(a)} and ${this.one(b)}`;
  }

  /** How far a value is from today's: `1.5 weeks (10 %)`. */
  distance(value: Decimal, today: Decimal): string {
    const change = value.minus(today).abs();
    const far = this.inUnit(this.asFineAs(value, today, change));
    const percent = percentOf(change, today, this.format);
    if (percent === '') return far;
    return isShare(this.cell) ? wording`${far} (${percent} of today’s number)` : `${far} (${percent})`;
  }

  /** The change between two values, with as many decimals as the finer of them is shown with, so that it is theirs. */
  private asFineAs(a: Decimal, b: Decimal, change: Decimal): string {
    const { unit } = this.cell;
    const finer = Math.max(...[a, b].map((value) => decimalsFor(tidied(value), unit)));
    const coarse = this.format.fixed(change, Math.min(finer, decimalsFor(tidied(change), unit)));
    return /[1-9]/.test(coarse) ? coarse : this.format.value(change, unit);
  }

  /** A change of a share in % is one of points, not of per cent. */
  private inUnit(number: string): string {
    if (this.cell.unitText.trim() !== '%') return spokenWithUnit(number, this.cell.unitText);
    return number === '1' ? wording`1 percentage point` : wording`${number} percentage points`;
  }
}
