import type { Decimal } from '../../../core/number';
import type { NamedChoice } from '../../../model/cell';
import type { Lever } from '../../../model/view';
import type { Curve } from '../../../study/curve';

/** Results with one of an input's choices; NaN where one cannot be computed. */
export interface ChoiceRow {
  readonly choice: NamedChoice;
  readonly isToday: boolean;
  /** In the order of the curves. */
  readonly values: readonly Decimal[];
}

/**
 * Computes results exactly with each choice of an input. It yields undefined after each of them, so that the page can
 * pause there.
 */
export function* choiceRows(
  { cell, base }: Pick<Lever, 'cell' | 'base'>,
  curves: readonly Pick<Curve, 'exact'>[],
): Generator<readonly ChoiceRow[] | undefined, void> {
  const rows: ChoiceRow[] = [];
  for (const choice of cell.choices) {
    const values = curves.map((curve) => curve.exact(choice.number));
    rows.push({ choice, isToday: choice.number.eq(base), values });
    yield undefined;
  }
  yield rows;
}
