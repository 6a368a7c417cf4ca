import { decimal, type Decimal } from '../../../core/number';
import type { OverYears } from '../../../trade/years/overYears';
import type { LinesDrawing } from '../../picture/labelledLines';
import type { Format } from '../../text/numberFormat';
import { yearsText } from './sentences';
import { yearsTexts } from './texts';

interface Point {
  readonly x: number;
  readonly y: number;
}

/** What has come and gone up to each instant, without interest. */
function plainSums({ lines }: OverYears): Decimal[] {
  let total = decimal(0);
  return lines.map(({ amount }) => {
    total = total.plus(amount);
    return total;
  });
}

function heightsOf(lines: readonly (readonly Point[])[]): { min: number; max: number } {
  const ys = [0, ...lines.flat().map(({ y }) => y)];
  const [min, max] = [Math.min(...ys), Math.max(...ys)];
  const air = (max - min || 1) * 0.06;
  return { min: min - air, max: max + air };
}

/** The sums so far by year, with interest and, where that differs, without; ringed where the outlay is paid back. */
export function yearsDrawing(found: OverYears, format: Format): LinesDrawing {
  const { lines, asked, discounted } = found;
  const worth = lines.map(({ year, cumulative }): Point => ({ x: year, y: cumulative.toNumber() }));
  const sums = plainSums(found);
  const plain = lines.map(({ year }, i): Point => ({ x: year, y: sums[i]!.toNumber() }));
  const isPlain = asked.rate.isZero();
  const paid = discounted.kind === 'after' ? discounted.years : undefined;
  const drawn = isPlain ? [worth] : [worth, plain];
  return {
    lines: drawn.map((points, i) => ({
      label: i === 0 && !isPlain ? yearsTexts.withInterest : yearsTexts.withoutInterest,
      leading: i === 0,
      points,
      look: { colour: i === 0 ? 'planB' : 'text', dash: i === 0 ? [] : [2, 3] },
    })),
    across: { min: 0, max: asked.years, title: yearsTexts.yearsAcross, tickAfter: '' },
    heights: heightsOf(drawn),
    // Out of the picture where there is no such day.
    today: { x: paid?.toNumber() ?? -1, text: paid === undefined ? '' : yearsText(paid, format) },
    levels: [0],
    rings: paid === undefined ? [] : [{ x: paid.toNumber(), y: 0 }],
  };
}
