import { decimal, type Decimal } from '../../core/number';
import type { Example } from '../../formula/example';
import { buildModel } from '../../model/buildModel';
import { cellNamed, givesTruth } from '../../model/model';
import type { Sheet } from '../../model/sheet';
import { evaluatePlan } from '../../model/values';

/** An input of an example as it is read. */
interface Given {
  readonly name: string;
  readonly number: string;
  readonly unit: string;
}

/** An example with its value. */
export interface WorkedExample {
  readonly formula: string;
  readonly given: readonly Given[];
  /** The exact number in `unit`, or true or false. */
  readonly value: Decimal | boolean;
  readonly unit: string;
}

/** A formula with the inputs that it names, not yet computed. */
export type Runnable = Omit<Example, 'gives'>;

const resultName = 'result';

function sheetOf({ formula, unit = '', cells = [] }: Runnable): Sheet {
  const entries = [...cells.map(([name, text, of]) => [name, of, text]), [resultName, unit, formula]];
  const columns = ['name', 'unit', 'formula'];
  const rows = entries.map((texts, i) => ({
    row: i + 2,
    fields: new Map(columns.map((column, k) => [column, texts[k] ?? ''])),
  }));
  return { columns, rows };
}

/**
 * Computes an example as a model of a few entries, in the same way as any model.
 * @throws Error where it gives no value, as an example that fails is a mistake of ours
 */
export function runExample(example: Runnable): WorkedExample {
  const model = buildModel(sheetOf(example));
  const cell = cellNamed(model, resultName);
  const [plan] = model.plans;
  if (cell === undefined || plan === undefined) throw new Error(`example without a result: ${example.formula}`);
  const number = evaluatePlan(plan).numbers[cell.id] ?? decimal(NaN);
  const fault = model.faults[0]?.message ?? '';
  if (number.isNaN()) throw new Error(`example without a value: ${example.formula}. ${fault}`);
  return {
    formula: example.formula,
    given: (example.cells ?? []).map(([name, text, unit]) => ({ name, number: text, unit })),
    value: givesTruth(plan, cell.id) ? number.eq(1) : number,
    unit: cell.unitText,
  };
}
