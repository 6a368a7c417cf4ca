import { readFileSync } from 'node:fs';
import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { decimal } from '../../../src/core/number';
import { readModelText } from '../../../src/files/readModel';
import { buildModel } from '../../../src/model/buildModel';
import {
  readStepFormula,
  stepFormula,
  withStepPrice,
  type PriceStep,
  type StepPrice,
} from '../../../src/model/change/stepPrice';
import { cellNamed, type Model } from '../../../src/model/model';
import { field, type Sheet } from '../../../src/model/sheet';
import { evaluatePlan } from '../../../src/model/values';
import { breakeven } from '../../../src/study/breakeven';
import { curveAlong } from '../../../src/study/curve';
import { lever } from '../../../src/model/view';
import { asked, idOf, modelOf, results } from '../table';

const labels = {
  first: 'Plug, to begin with',
  from: (step: number) => `Plug, step ${step}: from`,
  price: (step: number) => `Plug, step ${step}: price`,
  rise: 'The steps do not rise.',
};

const text = `
  bought [plug/year]: 200000 | range: 100000 400000
  plug_price [GBP/plug]: 0.03 | range: 0.02 0.04 | source: the seller
  other [GBP/plug]: 0.04 | range: 0.03 0.05 | correlation: plug_price 0.5
  year [GBP/year]: bought * plug_price + bought * other`;

function priced(model: Model, steps: readonly PriceStep[], change: Partial<StepPrice> = {}): Sheet {
  const inPlaceOf = cellNamed(model, 'plug_price');
  const quantity = cellNamed(model, 'bought')!;
  const own = { label: 'Plug', unit: 'GBP/plug', quantity, first: '0.03', steps, labels, source: 'entered', inPlaceOf };
  return withStepPrice(model.sheet, { ...own, ...change }).sheet;
}

function told(sheet: Sheet): string[] {
  return sheet.rows.map((row) => ['name', 'formula', 'low', 'role'].map((column) => field(row, column)).join(' | '));
}

const steps = [
  { from: '150000', price: '0.027' },
  { from: '250000', price: '0.025' },
];

describe('a price that becomes one by quantity', () => {
  const sheet = priced(modelOf(text), steps);

  it('is a formula over entries of its own, with a check that the steps rise', () =>
    expect(told(sheet)).toEqual([
      'bought | 200000 | 100000 | ',
      'plug_price | bought >= plug_price_3_from ? plug_price_3 : bought >= plug_price_2_from ? plug_price_2 : plug_price_1 |  | ',
      'plug_price_1 | 0.03 | 0.02 | ',
      'plug_price_2_from | 150000 |  | ',
      'plug_price_2 | 0.027 |  | ',
      'plug_price_3_from | 250000 |  | ',
      'plug_price_3 | 0.025 |  | ',
      'plug_price_steps_rise | plug_price_2_from > 0 and plug_price_2_from < plug_price_3_from |  | check',
      'other | 0.04 | 0.03 | ',
      'year | bought * plug_price + bought * other |  | ',
    ]));

  it('leaves its range, its source and what moves with it to the price to begin with', () => {
    const first = sheet.rows.find((row) => field(row, 'name') === 'plug_price_1')!;
    const other = sheet.rows.find((row) => field(row, 'name') === 'other')!;
    expect([field(first, 'source'), field(first, 'high'), field(other, 'correlation')]).toEqual([
      'the seller',
      '0.04',
      'plug_price_1 0.5',
    ]);
  });

  it('has no fault, and counts the price of the step that is reached for all that is bought', () => {
    const model = buildModel(sheet);
    expect(model.faults).toEqual([]);
    expect(evaluatePlan(model.plans[0]!).numbers[idOf(model, 'year')]!.toString()).toBe('13400');
  });

  it('moves its range to a price to begin with that lies outside of it', () => {
    const outside = priced(modelOf(text), steps, { first: '0.09' });
    const first = outside.rows.find((row) => field(row, 'name') === 'plug_price_1')!;
    expect([field(first, 'low'), field(first, 'high'), field(first, 'source')]).toEqual(['0.06', '0.12', 'entered']);
    expect(buildModel(outside).faults).toEqual([]);
  });
});

describe('asked about again', () => {
  const before = priced(modelOf(text), steps);
  const names = (sheet: Sheet): string[] => sheet.rows.map((row) => field(row, 'name'));

  it('the same steps change nothing', () => {
    const after = priced(buildModel(before), steps);
    expect(told(after)).toEqual(told(before));
  });

  it('a further step stands behind the others', () => {
    const after = priced(buildModel(before), [...steps, { from: '300000', price: '0.024' }]);
    expect(names(after).slice(6, 9)).toEqual(['plug_price_3', 'plug_price_4_from', 'plug_price_4']);
    expect(buildModel(after).faults).toEqual([]);
    expect(names(after).filter((name) => name.includes('rise'))).toHaveLength(1);
  });

  it('a step that is taken away takes its entries with it', () => {
    const after = priced(buildModel(before), steps.slice(0, 1));
    expect(names(after)).not.toContain('plug_price_3');
    expect(names(after)).not.toContain('plug_price_3_from');
    const model = buildModel(after);
    expect([model.faults, model.cells.length]).toEqual([[], 8]);
  });
});

it('a new price stands behind the quantity that it is counted by', () => {
  const sheet = priced(modelOf(text), steps, { inPlaceOf: undefined });
  expect(sheet.rows.slice(0, 7).map((row) => field(row, 'name'))).toEqual([
    'bought',
    'plug_1',
    'plug_2_from',
    'plug_2',
    'plug_3_from',
    'plug_3',
    'plug',
  ]);
  expect(buildModel(sheet).faults).toEqual([]);
});

it('steps that do not rise are said by the check', () => {
  const falling = [steps[1]!, steps[0]!];
  const model = buildModel(priced(modelOf(text), falling));
  expect(evaluatePlan(model.plans[0]!).numbers[idOf(model, 'plug_price_steps_rise')]!.toNumber()).toBe(0);
});

it('reads its own formulas and no other', () => {
  const known = {
    quantity: 'q',
    first: 'a',
    steps: [
      { from: 'f', price: 'p' },
      { from: 'g', price: 'r' },
    ],
  };
  expect(stepFormula(known)).toBe('q >= g ? r : q >= f ? p : a');
  expect(readStepFormula(stepFormula(known))).toEqual(known);
  for (const other of ['a', 'q >= f ? p : 2', 'q > f ? p : a', 'q >= f ? p : s >= g ? r : a', '(q >= f ? p : a)']) {
    expect(readStepFormula(other), other).toBeUndefined();
  }
});

describe('in every arithmetic', () => {
  /** The price by going through the steps one by one. */
  function naive(quantity: number, first: number, rising: readonly (readonly [number, number])[]): number {
    let price = first;
    for (const [from, each] of rising) if (quantity >= from) price = each;
    return price;
  }

  it('any number of steps gives what a plain loop gives', () => {
    const model = modelOf(text);
    const rising = fc
      .uniqueArray(fc.integer({ min: 1, max: 400 }), { minLength: 1, maxLength: 24 })
      .chain((froms) =>
        fc
          .array(fc.integer({ min: 1, max: 90 }), { minLength: froms.length, maxLength: froms.length })
          .map((prices) => froms.sort((a, b) => a - b).map((from, i) => [from * 1000, prices[i]! / 1000] as const)),
      );
    fc.assert(
      fc.property(rising, fc.integer({ min: 0, max: 402 }), (each, thousands) => {
        const made = buildModel(
          priced(
            model,
            each.map(([from, price]) => ({ from: String(from), price: String(price) })),
          ),
        );
        expect(made.faults).toEqual([]);
        const about = asked(made, 'plug_price');
        const response = about.response([lever(about.view, idOf(made, 'bought'))!]);
        // At each step, right below it, and anywhere.
        for (const quantity of [thousands * 1000, ...each.flatMap(([from]) => [from, from - 1])]) {
          const wanted = naive(quantity, 0.03, each);
          expect(response.exact([decimal(quantity)]).toNumber()).toBe(wanted);
          expect(response.float([quantity])).toBe(wanted);
        }
      }),
      { numRuns: 25 },
    );
  });

  it('a hundred steps are none too many', () => {
    const many = Array.from({ length: 100 }, (_, i) => ({ from: String((i + 1) * 1000), price: String(1 / (i + 2)) }));
    const model = buildModel(priced(modelOf(text), many));
    expect(model.faults).toEqual([]);
    expect(evaluatePlan(model.plans[0]!).numbers[idOf(model, 'plug_price')]!.toNumber()).toBe(1 / 101);
  });
});

it('breakeven meets the jump at a step where the step begins', () => {
  const model = buildModel(priced(modelOf(text), [{ from: '250000', price: '0.01' }]));
  const about = asked(model, 'plug_price');
  const curve = curveAlong(about.response([lever(about.view, idOf(model, 'bought'))!]));
  const { crossings } = breakeven(curve, { from: decimal(1), to: decimal(400000) }, decimal('0.02'));
  expect(crossings).toHaveLength(1);
  expect(crossings[0]!.isJump).toBe(true);
  expect(crossings[0]!.value.minus(250000).abs().toNumber()).toBeLessThan(1e-5);
});

it('the price of foam cubes in a shipped model is the same as its one step written so', () => {
  const { model } = readModelText(readFileSync('models/plug-media.csv', 'utf8'));
  const [quantity, inPlaceOf] = [cellNamed(model, 'foam_sown')!, cellNamed(model, 'foam_paid')!];
  for (const [sown, paid] of [
    ['250000', '0.02288'],
    ['150000', '0.02288'],
  ] as const) {
    const step = { from: sown, price: paid };
    const change = { quantity, inPlaceOf, first: '0.026', label: 'Price paid', unit: 'GBP/plug', source: '', labels };
    const { sheet } = withStepPrice(model.sheet, { ...change, steps: [step] });
    const shipped = { ...model.sheet, rows: model.sheet.rows.map((row) => withBreak(row, sown)) };
    const [made, plain] = [sheet, shipped].map((one) => buildModel(one));
    expect(made!.faults).toEqual([]);
    for (const name of ['foam_paid', 'foam_cost', 'peat_ties', 'cost_year', 'cost_per_plant']) {
      const [now, then] = [made!, plain!].map((one) => evaluatePlan(one.plans[0]!).numbers[idOf(one, name)]!);
      expect(now!.toString(), name).toBe(then!.toString());
    }
  }
});

function withBreak(row: Sheet['rows'][number], sown: string): Sheet['rows'][number] {
  if (field(row, 'name') !== 'foam_break') return row;
  return { ...row, fields: new Map(row.fields).set('formula', sown) };
}

it('a price that goes by its own quantity in each plan is the right one in each', () => {
  const model = modelOf(`
    bought [plug/year]: 100000 | in Few: 100000 | in Many: 300000
    plug_price [GBP/plug]: 0.03`);
  const sheet = priced(model, steps);
  const made = buildModel(sheet);
  expect(made.plans.map((plan) => evaluatePlan(plan).numbers[idOf(made, 'plug_price')]!.toString())).toEqual([
    '0.03',
    '0.025',
  ]);
  expect(results(text).year).toBe('14000');
});
