import { decimal } from '../../core/number';
import type { Cell } from '../../model/cell';
import { figure, words, type DataCell, type DataTable } from '../table/dataTable';
import { commonTexts } from '../text/commonTexts';
import type { Format } from '../text/numberFormat';
import { printedUnit } from '../text/printedUnit';
import { budgetTexts } from './budgetTexts';
import type { CaseBudget, Section } from './caseOf';
import { headings } from './headings';
import { amount, signedAmount } from './rounded';
import { lessens, sectionSum } from './sectionSum';

/** A part of the partial budget as cells: its sum, and the amount of each line. */
export interface BudgetPart {
  readonly section: Section;
  readonly sum: DataCell;
  readonly amounts: readonly DataCell[];
}

/** The partial budget as cells of a table. */
export interface BudgetRows {
  readonly parts: readonly BudgetPart[];
  readonly net: DataCell;
}

function sumCell(section: Section, made: CaseBudget, format: Format): DataCell {
  const text = sectionSum(section, made, format);
  if (made.unknown.length > 0) return words(text);
  return figure(text, lessens.has(section.kind) ? decimal(0).minus(section.total) : section.total);
}

/** The budget's sums are taken by the sign with which they count; there are none where an entry has no value. */
export function budgetRows(made: CaseBudget, format: Format): BudgetRows {
  return {
    parts: made.sections.map((section) => ({
      section,
      sum: sumCell(section, made, format),
      amounts: section.lines.map(({ value }) => figure(amount(value, made.currency, format), value)),
    })),
    net: figure(signedAmount(made.netChange, made, format), made.netChange),
  };
}

/** The budget as it is taken out: each line with the part that it belongs to, and the sums below their lines. */
export function budgetTable(
  { parts, net }: BudgetRows,
  { unit, unknown }: CaseBudget,
  nameOf: (cell: Cell) => string,
): DataTable {
  const inUnit = printedUnit(unit.text);
  const lines = parts.flatMap(({ section: { kind, lines: of }, sum, amounts }) => {
    const name = words(headings[kind].heading);
    const each = of.map(({ cell }, k) => [name, words(nameOf(cell)), amounts[k]!, words('')]);
    return unknown.length > 0 ? each : [...each, [name, words(budgetTexts.sum), words(''), sum]];
  });
  const missing = unknown.map(({ cell }) => [words(commonTexts.noValue), words(nameOf(cell)), words(''), words('')]);
  return {
    caption: budgetTexts.caption(inUnit),
    columns: [
      { name: budgetTexts.part },
      { name: commonTexts.entry },
      { name: budgetTexts.amount, unit: inUnit },
      { name: budgetTexts.sum, unit: inUnit },
    ],
    rows: [...lines, ...missing],
    foot: [[words(budgetTexts.netChange), words(''), words(''), net]],
  };
}
