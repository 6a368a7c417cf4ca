import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { buildModel } from '../../src/model/buildModel';
import { edit, editIn, type Edited } from '../../src/model/edit';
import type { Model } from '../../src/model/model';
import { field } from '../../src/model/sheet';
import { evaluatePlan } from '../../src/model/values';
import { randomModels } from './randomModel';
import { shippedModels } from './shippedModels';
import { idOf, modelOf, planOf, shown, told } from './table';

const text = `
- Title
x: 2 | range: 1 3
y: 10 | in A: 20
z: x * 2 | in B: 7
w: | in A: 1 | in B: 2
r: x + y + z + w`;

/** Everything of a model but the checked formulas, as plain data. */
function plainly({ plans, ...rest }: Model): unknown {
  const contents = plans.map(({ name, contents: all, structure }) => {
    return [name, structure.order, all.map((content) => ({ ...content, node: undefined }))];
  });
  return { ...rest, contents };
}

/** A model after an edit, which must be the one that reading the changed sheet afresh gives. */
function changed(from: Model, row: number, column: string, to: string): Edited {
  const after = edit(from, { row, column, text: to });
  expect(plainly(after.model)).toEqual(plainly(buildModel(after.model.sheet, from.reading)));
  return after;
}

/** The same in short, for many edits: the texts that fill the cells, and what is told of them. */
function inShort({ plans, faults, notices }: Model): string {
  const contents = plans.map((plan) => plan.contents.map(({ kind, own, text: written }) => [kind, own, written]));
  return JSON.stringify([contents, faults, notices]);
}

function changedInShort(from: Model, row: number, column: string, to: string): Edited {
  const after = edit(from, { row, column, text: to });
  expect(inShort(after.model)).toBe(inShort(buildModel(after.model.sheet, from.reading)));
  return after;
}

/** The result r in every plan. */
function allOf(model: Model): (string | undefined)[] {
  return model.plans.map((plan) => shown(model, evaluatePlan(plan))['r']);
}

describe('an edit lands where the plan takes the entry from', () => {
  it.each([
    ['the shared number', 'x', 'A', 3, 'formula'],
    ["the plan's own number", 'y', 'A', 4, 'plan: A'],
    ['the shared number, where only another plan has its own', 'y', 'B', 4, 'formula'],
    ['the shared formula', 'z', 'A', 5, 'formula'],
    ["the plan's own number, in place of a formula", 'z', 'B', 5, 'plan: B'],
    ["the plan's own number, where nothing is shared", 'w', 'B', 6, 'plan: B'],
  ])('%s: %s in plan %s', (_claim, name, plan, row, column) => {
    const model = modelOf(text);
    expect(editIn(model, planOf(model, plan), idOf(model, name), '5')).toEqual({ row, column, text: '5' });
  });

  it('the shared column, in a file without plan columns', () => {
    const model = modelOf('a: 1');
    expect(editIn(model, planOf(model), 0, '5')).toEqual({ row: 2, column: 'formula', text: '5' });
  });

  it('the column where its text stands, in a faulty entry', () => {
    const model = modelOf('a: 1 | in A: nope');
    expect(editIn(model, planOf(model), 0, '5').column).toBe('plan: A');
  });
});

describe('a number in place of a number', () => {
  it.each([
    ['that is shared moves every plan that uses it', 3, 'formula', '2.5', ['28.5', '21.5']],
    ['that is shared leaves the plan that has its own', 4, 'formula', '11', ['27', '22']],
    ["that is a plan's own moves that plan only", 4, 'plan: A', '30', ['37', '21']],
    ['stands where nothing is shared', 6, 'plan: B', '3', ['27', '22']],
    ["that is a plan's own, in place of a formula", 5, 'plan: B', '9', ['27', '23']],
  ])('%s', (_claim, row, column, to, totals) => {
    const before = modelOf(text);
    const { model, changed: ids } = changed(before, row, column, to);
    expect([allOf(before), allOf(model)]).toEqual([['27', '21'], totals]);
    expect(ids?.map((id) => model.cells[id]?.row)).toEqual([row]);
    model.plans.forEach(({ structure }, p) => {
      expect(structure).toBe(before.plans[p]?.structure);
    });
  });

  it('leaves the model before as it was', () => {
    const before = modelOf(text);
    changed(before, 3, 'formula', '3');
    expect([allOf(before), field(before.sheet.rows[1]!, 'formula')]).toEqual([['27', '21'], '2']);
  });

  it.each([
    ['leaves its range', 'a: 2 | range: 1 3', '5', ['range-value | 2 | formula | a | 5']],
    ['comes back into its range', 'a: 9 | range: 1 3', '2', []],
    ['stays outside its range', 'a: 9 | range: 1 3', '8', ['range-value | 2 | formula | a | 8']],
    [
      'leaves its range, before other faults of its row',
      'a: 2 | range: 1 3 | role: check | correlation: b 1',
      '5',
      [
        'correlation-text | 2 | correlation | a | b 1',
        'range-value | 2 | formula | a | 5',
        'check-number | 2 | role | a | check',
      ],
    ],
  ])('that %s: its fault is that of reading afresh', (_claim, model, to, faults) => {
    const after = changed(modelOf(model), 2, 'formula', to);
    expect(told(after.model.faults)).toEqual(faults);
  });

  it.each([
    ['beside a range on a calculated shared formula', 'b: 3\na: b * 2 | range: 1 3 | in A: 5', 3, '6'],
    ['beside a shared number outside its range', 'b: 3\na: 9 | range: 1 3 | in A: 5', 3, '6'],
    ['in place of an input with a range', 'b: 3\na: 2 | range: 1 3 | in A: 5', 3, '6'],
    ['the same again', 'b: 3\na: 2 | range: 1 3 | in A: 5', 3, '5'],
  ])("that is a plan's own, %s: faults and notices are those of reading afresh", (_claim, model, row, to) => {
    const after = changed(modelOf(model), row, 'plan: A', to);
    expect(after.model.faults.length).toBeLessThanOrEqual(1);
  });
});

describe('any other change is as reading afresh', () => {
  it.each([
    ['a formula for a number', 3, 'formula', 'y / 4'],
    ['a number for a formula', 5, 'formula', '3'],
    ['another formula', 5, 'formula', 'x * 3'],
    ['a faulty formula', 5, 'formula', 'x *'],
    ['a circle', 3, 'formula', 'r'],
    ['a number of its own for a plan', 3, 'plan: A', '5'],
    ['no number of its own any more', 4, 'plan: A', ''],
    ['nothing', 3, 'formula', ''],
    ['a number with spaces', 3, 'formula', ' 2.5 '],
    ['a decimal comma', 3, 'formula', '2,5'],
    ['a number of 40 digits', 3, 'formula', '1'.repeat(40)],
    ['low, as a number', 3, 'low', '0'],
    ['high, as a number', 3, 'high', '30'],
    ['low, no number', 3, 'low', 'few'],
    ['low of a cell that a plan has its own number of', 4, 'low', '5'],
    ['a step', 3, 'step', '0.5'],
    ['a step of 0', 3, 'step', '0'],
    ['a note that is a number', 3, 'note', '7'],
    ['a label that is a number', 3, 'label', '7'],
    ['a name', 3, 'name', 'xx'],
    ['a name that is taken', 3, 'name', 'y'],
    ['no name', 3, 'name', ''],
    ['a unit', 3, 'unit', 'plant'],
    ['a role', 3, 'role', 'check'],
    ['a shape', 3, 'shape', 'pert'],
    ['a column that the file has not', 3, 'colour', '7'],
    ['a plan that the file has not', 3, 'plan: C', '7'],
    ['text', 2, 'label', 'Another title'],
    ['a formula in text', 2, 'formula', '7'],
  ])('%s', (_claim, row, column, to) => {
    const { model } = changed(modelOf(text), row, column, to);
    const edited = model.sheet.rows.find((one) => one.row === row);
    expect(edited?.fields.get(column)).toBe(to);
  });

  it('and says that everything may have changed', () => {
    expect(changed(modelOf(text), 5, 'formula', 'x * 3').changed).toBeUndefined();
  });

  it('what was found while the file was read stays', () => {
    const reading = {
      faults: [{ code: 'c', message: 'm', where: { row: 9, column: '', cell: '', text: '' } }],
      notices: [],
    };
    const before = buildModel(modelOf(text).sheet, reading);
    for (const [column, to] of [
      ['formula', '2.5'],
      ['formula', 'y'],
      ['unit', 's'],
    ] as const) {
      expect(changed(before, 3, column, to).model.faults).toContainEqual(reading.faults[0]);
    }
  });

  it('a record that is not there is our own mistake', () => {
    expect(() => edit(modelOf(text), { row: 99, column: 'formula', text: '1' })).toThrow('no record 99 to edit');
  });
});

describe('in any model', () => {
  it('any number in any number column of any row is as reading afresh', () => {
    const columns = fc.constantFrom('formula', 'low', 'high', 'plan: A', 'plan: B', 'step');
    const change = fc.record({ row: fc.nat(999), column: columns, number: fc.integer({ min: -5, max: 20 }) });
    fc.assert(
      fc.property(randomModels, fc.array(change, { maxLength: 4 }), ({ text: lines }, changes) => {
        let model = modelOf(`${lines}\nlast: 1 | range: 0 2 | in A: 2 | in B: 3`);
        for (const { row, column, number } of changes) {
          const { rows } = model.sheet;
          model = changedInShort(model, rows[row % rows.length]!.row, column, String(number)).model;
        }
      }),
      { seed: 13, numRuns: 200 },
    );
  }, 30_000);

  it.each(shippedModels)(
    '%s: every input in every plan, moved beyond its range and back',
    (_file, model) => {
      for (const plan of model.plans) {
        for (const { id } of model.cells.filter((cell) => plan.contents[cell.id]?.kind === 'input')) {
          const { row, column } = editIn(model, plan, id, '');
          const there = changedInShort(model, row, column, '123456');
          expect(there.changed).toEqual([id]);
          const back = changedInShort(there.model, row, column, plan.contents[id]!.text);
          expect(inShort(back.model)).toBe(inShort(model));
        }
      }
    },
    30_000,
  );
});

describe('a source given with a number', () => {
  it('is written where the file has the column, and the checked formulas stay', () => {
    const from = modelOf('x: 2 | source: invented\nr: x * 3');
    const { model, changed: ids } = edit(from, { row: 2, column: 'formula', text: '4', source: 'entered 3 May 2026' });
    expect(model.sheet.rows[0]!.fields.get('source')).toBe('entered 3 May 2026');
    expect(model.cells).toBe(from.cells);
    expect(ids).toEqual([0]);
  });

  it('adds no column to a file without sources', () => {
    const sheet = {
      columns: ['name', 'formula'],
      rows: [
        {
          row: 2,
          fields: new Map([
            ['name', 'x'],
            ['formula', '2'],
          ]),
        },
      ],
    };
    const { model } = edit(buildModel(sheet), { row: 2, column: 'formula', text: '4', source: 'entered 3 May 2026' });
    expect(model.sheet.columns).toEqual(['name', 'formula']);
    expect([...model.sheet.rows[0]!.fields.keys()]).toEqual(['name', 'formula']);
  });

  it('alone changes nothing that is computed', () => {
    const from = modelOf('x: 2\nr: x * 3');
    const { model, changed: ids } = edit(from, { row: 2, column: 'source', text: 'confirmed 3 May 2026' });
    expect([model.cells === from.cells, model.plans === from.plans, ids]).toEqual([true, true, []]);
  });
});
