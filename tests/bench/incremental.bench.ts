// One changed input in a model of 10,000 cells, exactly, as after a keystroke; aim: under 5 ms. And the way there: a
// file of 20,000 rows read, checked, and computed for the first time.
import { newTableFile, readTable } from '../../src/files/tableFile';
import { modelTable } from '../../src/files/tableKind';
import { writeTable } from '../../src/files/writeTable';
import { buildModel } from '../../src/model/buildModel';
import { edit, editIn } from '../../src/model/edit';
import type { Model } from '../../src/model/model';
import { evaluatePlan, evaluateAffected, affected, type Values } from '../../src/model/values';
import { manyFarms } from './manyFarms';
import { measureTogether, printTable } from './measure';
import { model as one } from './shipped';

const seed = 20_31;

function without(faults: Model['faults']): void {
  if (faults.length > 0) throw new Error(`the large model has faults: ${faults[0]?.message}`);
}

const sheet = manyFarms(one.sheet, 10_000, seed);
const model = buildModel(sheet);
without(model.faults);
const before = model.plans.map((plan) => evaluatePlan(plan));
const unknown = before.reduce((sum, { errors }) => sum + errors.size, 0);
if (unknown > 0) throw new Error(`${unknown} cells of the large model have no value`);

/** A keystroke in an input: the edit, and the values of every plan that it touches. */
function keystroke(name: string): () => Values[] {
  const cell = model.ids.get(name)!;
  const plan = model.plans.at(-1)!;
  const number = model.plans.at(-1)!.contents[cell];
  if (number?.kind !== 'input') throw new Error(`${name} is no input of the large model`);
  const change = editIn(model, plan, cell, number.number.times(1.01).toString());
  return () => {
    const { model: next, changed = [] } = edit(model, change);
    return next.plans.map((moved, p) =>
      moved === model.plans[p] ? before[p]! : evaluateAffected(moved, before[p]!, affected(moved, changed)),
    );
  };
}

/** How many cells a change of an input computes again, in all plans. */
function reached(name: string): string {
  const counts = model.plans.map((plan) => affected(plan, [model.ids.get(name)!]).length);
  return `${name.replace(/_\d+$/, '')}, ${counts.reduce((a, b) => a + b)} cells`;
}

printTable(
  `One changed input of a model of ${model.cells.length} cells in ${model.plans.length} plans, exactly`,
  measureTogether(
    {
      [reached('transplant_time_40')]: keystroke('transplant_time_40'),
      [reached('interval_40')]: keystroke('interval_40'),
      [`shared: ${reached('wage')}`]: keystroke('wage'),
    },
    { runs: 9 },
  ),
);

const large = manyFarms(one.sheet, 20_000, seed);
const text = writeTable(newTableFile({ ...large, rows: [] }, modelTable), large);
without(readTable(text, modelTable).problems);
const twenty = buildModel(large);

printTable(
  `The way there: ${large.rows.length} rows, ${(text.length / 1e6).toFixed(1)} MB`,
  measureTogether(
    {
      'read the file': () => readTable(text, modelTable),
      'check 10,000 cells': () => buildModel(sheet),
      'check 20,000 cells': () => buildModel(large),
      'compute 20,000 cells of a plan': () => evaluatePlan(twenty.plans[1]!),
    },
    { runs: 5 },
  ),
);
