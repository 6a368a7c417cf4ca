import { columnDecimals } from '../../text/columnDecimals';
import type { OverYears } from '../../../trade/years/overYears';
import { figure, words, type DataTable } from '../../table/dataTable';
import type { Format } from '../../text/numberFormat';
import type { CaseBudget } from '../caseOf';
import { outlayUnit } from './terms';
import { yearsTexts } from './texts';

/** A line of the table as texts. */
export interface YearRow {
  readonly year: string;
  readonly what: string;
  readonly amount: string;
  readonly factor: string;
  readonly present: string;
  readonly cumulative: string;
  /** Whether the outlay is paid back in this line for the first time. */
  readonly pays: boolean;
}

/** Decimals of a discount factor in printed tables. */
const factorDecimals = 4;

export function yearRows({ lines }: OverYears, made: CaseBudget, format: Format): YearRow[] {
  const unit = outlayUnit(made);
  const decimals = columnDecimals(
    lines.flatMap(({ amount, present, cumulative }) => [amount, present, cumulative]),
    unit,
  );
  const first = lines.findIndex(({ cumulative }) => cumulative.gte(0));
  return lines.map(({ what, year, amount, factor, present, cumulative }, i) => ({
    year: String(year),
    what: yearsTexts.whats[what],
    amount: format.fixed(amount, decimals),
    factor: format.fixed(factor, factorDecimals),
    present: format.fixed(present, decimals),
    cumulative: format.fixed(cumulative, decimals),
    pays: i > 0 && i === first,
  }));
}

/** The same rows as a table that can be taken out. */
export function yearsTable(found: OverYears, made: CaseBudget, format: Format): DataTable {
  const { heads } = yearsTexts;
  const rows = yearRows(found, made, format);
  return {
    caption: yearsTexts.caption(made.currency),
    columns: [
      { name: heads.year },
      { name: heads.what, words: true },
      { name: heads.amount, unit: made.currency },
      { name: heads.factor },
      { name: heads.present, unit: made.currency },
      { name: heads.cumulative, unit: made.currency },
    ],
    rows: found.lines.map(({ year, amount, factor, present, cumulative }, i) => {
      const row = rows[i]!;
      return [
        figure(row.year, year),
        words(row.what),
        figure(row.amount, amount),
        figure(row.factor, factor),
        figure(row.present, present),
        figure(row.cumulative, cumulative),
      ];
    }),
  };
}
