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
import { field, withField, withRow, type Sheet, type SheetRow } from './sheet';

/** A change of one field of one record. */
export interface Edit {
  readonly row: number;
  readonly column: string;
  readonly text: string;
  /**
   * Where the text comes from, for the column `source` where the file has one; what stands there stays where this is
   * undefined.
   */
  readonly source?: string;
}

/** The edit that gives an input another number, or an entry another formula, where a plan takes it from. */
export function editIn(model: Model, { contents, column }: Plan, cell: number, text: string): Edit {
  const own = contents[cell]?.own === true;
  return { row: model.cells[cell]?.row ?? 0, column: own && column !== undefined ? column : 'formula', text };
}

/** The cells whose content a change of model touched, by plan; for computing no more than that again. */
export interface Edited {
  readonly model: Model;
  /** Cells to compute from, or undefined where everything may have changed. */
  readonly changed: readonly number[] | undefined;
}

function replaced(plan: Plan, id: number, content: Content): Plan {
  return { ...plan, contents: plan.contents.with(id, content) };
}

/** Whether a plan takes a cell's number from a column. */
function holdsNumber(column: string, plan: Plan, own: boolean): boolean {
  return own ? column === plan.column : column === 'formula';
}

/** The plans after an input's number changed, or undefined where the change is of another kind. */
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

/** What is found of a model after a number changed: only what speaks of that number is looked at again. */
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

function withColumn(sheet: Sheet, column: string): Sheet {
  return sheet.columns.includes(column) ? sheet : { ...sheet, columns: [...sheet.columns, column] };
}

/**
 * A model with one field changed. A number that takes a number's place keeps every checked formula, and a source all of
 * the model; any other change checks the sheet anew.
 */
export function edit(model: Model, { row: rowNumber, column, text, source }: Edit): Edited {
  const before = model.sheet.rows.find((candidate) => candidate.row === rowNumber);
  if (before === undefined) throw new Error(`no record ${rowNumber} to edit`);
  const filled = withField(before, column, text);
  // A file without sources stays one: a column more would write every record anew.
  const hasSources = model.sheet.columns.includes('source');
  const row = source === undefined || !hasSources ? filled : withField(filled, 'source', source);
  const sheet = withColumn(withRow(model.sheet, row), column);
  if (column === 'source') return { model: { ...model, sheet }, changed: [] };
  const id = model.cells.find((cell) => cell.row === rowNumber)?.id;
  const plans = id === undefined ? undefined : withNumber(model, id, column, text.trim());
  if (id === undefined || plans === undefined) return { model: buildModel(sheet, model.reading), changed: undefined };
  const findings = findingsAfter(model, plans, id, row);
  return { model: { ...model, sheet, plans, findings, ...reported(model.reading, findings) }, changed: [id] };
}
