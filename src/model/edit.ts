import { buildModel } from './buildModel';
import { isNumberText } from '../core/number';
import type { Problem } from '../core/problem';
import type { Content } from './content';
import type { Model, Plan } from './model';
import { choiceFaultsOf } from './choices';
import { dateFaults } from './cropParts';
import { reported, type Findings } from './findings';
import { rangeFaultsOf, replacedRanges } from './rangeFaults';
import { isNumber, readNumber } from './readNumber';
import { field, withField, withRow, type SheetRow } from './sheet';

/** A change of one field in one row of the sheet. */
export interface Edit {
  readonly row: number;
  readonly column: string;
  readonly text: string;
}

/**
 * The edit that gives an entry another number or formula in a plan: in the plan's own column where the plan has one for
 * it, else in the shared one.
 */
export function editIn(model: Model, { contents, column }: Plan, cell: number, text: string): Edit {
  const own = contents[cell]?.own === true;
  return { row: model.cells[cell]?.row ?? 0, column: own && column !== undefined ? column : 'formula', text };
}

/** A model after an edit, with the cells to compute again. */
export interface Edited {
  readonly model: Model;
  /** The cells whose content changed; undefined where any cell may have changed. */
  readonly changed: readonly number[] | undefined;
}

function replaced(plan: Plan, id: number, content: Content): Plan {
  return { ...plan, contents: plan.contents.with(id, content) };
}

/** Whether a change in this column is the number that the plan uses for a cell. */
function holdsNumber(column: string, plan: Plan, own: boolean): boolean {
  return own ? column === plan.column : column === 'formula';
}

/** The plans after an input's number changed; undefined for any other kind of change. */
function withNumber(model: Model, id: number, column: string, text: string): Plan[] | undefined {
  const number = isNumberText(text) ? readNumber(text) : undefined;
  if (number === undefined || !isNumber(number)) return undefined;
  const isHit = (plan: Plan): boolean => holdsNumber(column, plan, plan.contents[id]?.own === true);
  const hit = model.plans.filter(isHit);
  if (hit.length === 0 || hit.some((plan) => plan.contents[id]?.kind !== 'input')) return undefined;
  return model.plans.map((plan) => {
    const content = plan.contents[id];
    return content !== undefined && isHit(plan)
      ? replaced(plan, id, { kind: 'input', own: content.own, text, number })
      : plan;
  });
}

/** The findings after a number changed: only checks of that number are run again. */
function findingsAfter({ findings, cells }: Model, plans: readonly Plan[], id: number, row: SheetRow): Findings {
  const cell = cells[id]!;
  const elsewhere = ({ where }: Problem): boolean => where.row !== row.row;
  const ofRow = (kept: readonly Problem[], anew: readonly Problem[]): Problem[] =>
    [...kept.filter(elsewhere), ...anew].sort((a, b) => a.where.row - b.where.row);
  const shared = field(row, 'formula');
  const anew = [...rangeFaultsOf(cell, shared), ...dateFaults(cell, plans), ...choiceFaultsOf(cell, shared, plans)];
  return {
    ...findings,
    ranges: ofRow(findings.ranges, anew),
    replaced: ofRow(findings.replaced, replacedRanges(cell, plans)),
  };
}

/**
 * A model with one field changed. Where a number replaces a number, every checked formula is kept; any other change
 * checks the whole sheet again. Throws for a row that the sheet does not have.
 */
export function edit(model: Model, { row: rowNumber, column, text }: Edit): Edited {
  const before = model.sheet.rows.find((candidate) => candidate.row === rowNumber);
  if (before === undefined) throw new Error(`no record ${rowNumber} to edit`);
  const row = withField(before, column, text);
  const sheet = withRow(model.sheet, row);
  const id = model.cells.find((cell) => cell.row === rowNumber)?.id;
  const plans = id === undefined ? undefined : withNumber(model, id, column, text.trim());
  if (id === undefined || plans === undefined) return { model: buildModel(sheet, model.reading), changed: undefined };
  const findings = findingsAfter(model, plans, id, row);
  return { model: { ...model, sheet, plans, findings, ...reported(model.reading, findings) }, changed: [id] };
}
