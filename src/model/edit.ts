import { buildModel } from './buildModel';
import { isNumberText } from '../core/number';
import type { Content, Model, Plan } from './model';
import { rangeFault } from './rangeFaults';
import { isNumber, readNumber } from './readNumber';
import { field, planOfColumn, withField, withRow, type SheetRow } from './sheet';

/** A change of one field of one record. */
export interface Edit {
  readonly row: number;
  readonly column: string;
  readonly text: string;
}

/** The edit that gives an input another number, or an entry another formula, where a plan takes it from. */
export function editIn(model: Model, plan: Plan, cell: number, text: string): Edit {
  const own = plan.contents[cell]?.own === true;
  const column = model.sheet.columns.find((name) => planOfColumn(name) === plan.name);
  return { row: model.cells[cell]?.row ?? 0, column: own && column !== undefined ? column : 'formula', text };
}

/** The cells whose content a change of model touched, by plan; for computing no more than that again. */
export interface Edited {
  readonly model: Model;
  /** Cells to compute from, or undefined where everything may have changed. */
  readonly changed: readonly number[] | undefined;
}

function replaced(plan: Plan, id: number, content: Content): Plan {
  return { ...plan, contents: plan.contents.map((before, at) => (at === id ? content : before)) };
}

/** The plans after an input's number changed, or undefined where the change is of another kind. */
function withNumber(model: Model, id: number, column: string, text: string): Plan[] | undefined {
  const number = isNumberText(text) ? readNumber(text) : undefined;
  if (number === undefined || !isNumber(number)) return undefined;
  const owner = planOfColumn(column);
  const inColumn = (plan: Plan): boolean =>
    owner === undefined ? plan.contents[id]?.own === false : plan.name === owner && plan.contents[id]?.own === true;
  const hit = model.plans.filter(inColumn);
  if (hit.length === 0 || hit.some((plan) => plan.contents[id]?.kind !== 'input')) return undefined;
  return model.plans.map((plan) => {
    const content = plan.contents[id];
    return content !== undefined && inColumn(plan)
      ? replaced(plan, id, { kind: 'input', own: content.own, text, number })
      : plan;
  });
}

function rowOf(model: Model, row: number): SheetRow | undefined {
  return model.sheet.rows.find((candidate) => candidate.row === row);
}

/** The faults after a number changed: the only one that speaks of a number is that it leaves its range. */
function faultsAfter(model: Model, id: number, row: SheetRow): Model['faults'] {
  const cell = model.cells[id];
  const fault = cell === undefined ? undefined : rangeFault(cell, field(row, 'formula'));
  const kept = model.faults.filter(({ code, where }) => code !== 'range-value' || where.row !== row.row);
  return fault === undefined ? kept : [...kept, fault].sort((a, b) => a.where.row - b.where.row);
}

/**
 * A model with one field changed. A number that takes a number's place keeps every checked formula; any other change
 * checks the sheet anew.
 */
export function edit(model: Model, { row: rowNumber, column, text }: Edit): Edited {
  const before = rowOf(model, rowNumber);
  if (before === undefined) throw new Error(`no record ${rowNumber} to edit`);
  const row = withField(before, column, text);
  const sheet = withRow(model.sheet, row);
  const id = model.cells.find((cell) => cell.row === rowNumber)?.id;
  const plans = id === undefined ? undefined : withNumber(model, id, column, text);
  if (id === undefined || plans === undefined) return { model: buildModel(sheet, model.reading), changed: undefined };
  return { model: { ...model, sheet, plans, faults: faultsAfter(model, id, row) }, changed: [id] };
}
