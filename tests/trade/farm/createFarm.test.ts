import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { standingOf } from '../../../src/model/change/sources';
import { edit } from '../../../src/model/edit';
import { field, sourceOf } from '../../../src/model/sheet';
import { evaluatePlan } from '../../../src/model/values';
import { farmQuestions, type FigureKey } from '../../../src/trade/farm/answers';
import { askedFigures } from '../../../src/trade/farm/askedFigures';
import { answersOf, farmFile, farmModel, farmOf, own, rowOf, templateOf, valueIn } from './farm';

describe.each(farmQuestions)('a farm of which nothing is said, asking %s', (question) => {
  const model = farmModel(answersOf({}, { question }));

  it('reads back with nothing at fault and nothing to be warned of', () => {
    expect([...model.faults, ...model.notices]).toEqual([]);
  });

  it('computes every entry and meets its checks', () => {
    const checks = model.cells.filter(({ role }) => role === 'check');
    for (const plan of model.plans) {
      const { numbers, errors } = evaluatePlan(plan);
      expect(errors.size).toBe(0);
      expect(checks.filter(({ id }) => numbers[id]?.eq(1) !== true).map(({ name }) => name)).toEqual([]);
    }
  });

  it('says nothing of the sample but in its sources', () => {
    const texts = model.sheet.rows.flatMap((row) =>
      ['label', 'note', 'group', 'choices'].map((column) => field(row, column)),
    );
    expect(texts.filter((text) => /sluice|slate halt|dike|invented|demo|sample|packer|rutgers/i.test(text))).toEqual(
      [],
    );
  });

  it('has the figures of its template, apart from what a sample must not say', () => {
    const names = askedFigures[question].map(({ entry }) => entry);
    const template = templateOf(question);
    const same = names.filter((name) => {
      const before = template.rows.find((row) => field(row, 'name') === name)!;
      return ['formula', 'low', 'high', 'source'].every(
        (column) => field(before, column) === rowOf(model, name)(column),
      );
    });
    const open = ['boards', 'nursery_boards_bought', 'staff_hours', 'guaranteed_hours', 'house_cost'];
    expect(names.filter((name) => !same.includes(name)).sort()).toEqual(
      names.filter((name) => open.includes(name)).sort(),
    );
  });
});

it('a figure that was timed says so in the model, and the others that they were entered', () => {
  const sources = new Map<FigureKey, string>([['moveSeconds', 'timed: 4 batches, 9 March 2031']]);
  const model = farmModel(answersOf({ moveSeconds: 12, wage: 20 }, { sources }));
  const source = (name: string): string => rowOf(model, name)('source');
  expect([source('transplant_time'), standingOf(source('wage'))]).toEqual([
    'timed: 4 batches, 9 March 2031',
    'entered',
  ]);
});

describe('a farm with its own figures', () => {
  it.each(['hire', 'density'] as const)(
    'finishes 1,152 and 1,560 plants a week on whole boards, asking %s',
    (question) => {
      const model = farmModel(answersOf(own, { question, name: 'Willow Reach', currency: 'USD' }));
      expect(model.faults).toEqual([]);
      expect([0, 1].map((plan) => valueIn(model, plan, 'finished_week'))).toEqual(['1152', '1560']);
    },
  );

  it('buys as many nursery boards as it needs, also after another change', () => {
    const needed = (figures: object): string[] => {
      const model = farmModel(answersOf({ ...own, ...figures }));
      return ['nursery_boards_needed', 'nursery_boards_bought'].map((name) => valueIn(model, 1, name));
    };
    expect(needed({})).toEqual(['26', '26']);
    expect(needed({ nurseryTime: 1, finishingTime: 5 })).toEqual(['11', '11']);
    expect(needed({ nurseryBoards: 40 })).toEqual(['26', '40']);
  });

  it('has hours of the present staff for today’s work and no more, so that only added hours are paid for', () => {
    const paid = (freeHours: number | undefined): string[] => {
      const model = farmModel(answersOf({ ...own, ...(freeHours !== undefined && { freeHours }) }));
      return [0, 1].map((plan) => Number(valueIn(model, plan, 'hire_hours')).toFixed(1));
    };
    // 1,560 plants moved at 12 s, 408 more set and harvested at 34.5 s, 30 boards more washed at 75 s: 35,046 s, and
    // 12 % on top.
    expect(paid(undefined)).toEqual(['0.0', '10.9']);
    expect(paid(4)).toEqual(['0.0', '6.9']);
    expect(paid(40)).toEqual(['0.0', '0.0']);
  });

  it('says so where a task that takes longer would put a hire into today’s plan', () => {
    const model = farmModel(answersOf({ ...own, freeHours: 1 }));
    const checked = ({ seconds }: { seconds: string }): string[] => {
      const row = model.cells[model.ids.get('harvest_time')!]!.row;
      const changed = edit(model, { row, column: 'formula', text: seconds }).model;
      return [0, 1].map((plan) => valueIn(changed, plan, 'staff_do_todays_work'));
    };
    // 1,152 heads a week: one second more a head are 0.36 h with the allowance, of 1 h free.
    const seconds = Number(rowOf(model, 'harvest_time')('formula'));
    expect(checked({ seconds: String(seconds) })).toEqual(['1', '1']);
    expect(checked({ seconds: String(seconds + 2) })).toEqual(['1', '1']);
    expect(checked({ seconds: String(seconds + 3) })).toEqual(['0', '1']);
  });

  it('carries the name, the currency and no other', () => {
    const model = farmModel(answersOf(own, { name: 'Willow Reach', currency: 'USD' }));
    expect(model.title).toBe('Does it pay to hire a transplanter? Willow Reach');
    expect(farmFile(answersOf(own, { currency: 'USD' }))).not.toContain('EUR');
    expect(rowOf(model, 'seed_price')('formula')).toBe('0.028');
  });

  it('keeps times in the unit in which they were given', () => {
    const model = farmModel(answersOf(own));
    expect(['formula', 'unit', 'low', 'high'].map(rowOf(model, 'finish_time_straight'))).toEqual([
      '6',
      'week',
      '5.4',
      '6.6',
    ]);
    const inDays = farmModel(answersOf({ timeToday: 42 }, { timeUnit: 'day' }));
    expect(['formula', 'unit'].map(rowOf(inDays, 'finish_time_straight'))).toEqual(['42', 'day']);
  });

  it('gives each answer a source of its day and a range by its rule', () => {
    const model = farmModel(
      answersOf({ wage: 20, lostAtMove: 4, lostAfter: 0, boards: 300, moveSeconds: 10, marketLimit: 1000 }),
    );
    const said = (name: string): string[] => ['formula', 'low', 'high', 'shape'].map(rowOf(model, name));
    expect(said('wage')).toEqual(['20', '16', '24', '']);
    expect(said('nursery_survival')).toEqual(['96', '94', '98', '']);
    expect(said('finish_survival_after_nursery')).toEqual(['100', '', '', '']);
    expect(said('boards')).toEqual(['300', '', '', '']);
    expect(said('transplant_time')).toEqual(['10', '8', '12', '']);
    expect(said('market_limit')).toEqual(['1000', '800', '1200', '']);
    expect(rowOf(model, 'wage')('source')).toBe('entered 29 November 2026');
    expect(standingOf(sourceOf(model.sheet, rowNumber(model, 'wage')))).toBe('entered');
  });

  it('says whose the figures are that nobody gave', () => {
    const model = farmModel(answersOf(own));
    expect(rowOf(model, 'staff_hours')('source')).toBe(
      'worked out: the hours of today’s work as it then stood, and none free beside them',
    );
    expect(standingOf(rowOf(model, 'staff_hours')('source'))).toBe('other');
    expect(standingOf(rowOf(model, 'transplant_time')('source'))).toBe('invented');
  });

  it('goes into US measures with figures that a person would write', () => {
    const model = farmModel(answersOf(own, { system: 'us' }));
    expect(['formula', 'unit'].map(rowOf(model, 'board_area'))).toEqual(['8', 'ft^2/board']);
    expect(['formula', 'low', 'high', 'unit'].map(rowOf(model, 'first_spread'))).toEqual([
      '1.97',
      '1.18',
      '3.15',
      'in',
    ]);
    expect(model.faults).toEqual([]);
  });

  it('has no hire in it where nobody asks for one', () => {
    const model = farmModel(answersOf(own, { question: 'density' }));
    expect(model.cells.filter(({ name, label, note }) => /hire|overtime/i.test(name + label + note))).toEqual([]);
    const texts = model.lines.flatMap((line) => (line.kind === 'text' ? `${line.label} ${line.note}` : []));
    expect(texts.filter((text) => /the hire|a hire/.test(text))).toEqual([]);
    expect(texts.some((text) => text.includes('Where it crosses zero, the move stops paying.'))).toBe(true);
  });
});

function rowNumber(model: ReturnType<typeof farmModel>, name: string): number {
  return model.cells[model.ids.get(name)!]!.row;
}

const counts: readonly FigureKey[] = ['boards', 'finishingHoles', 'nurseryHoles', 'nurseryBoards', 'plantsYear'];

describe('whatever is answered and whatever is skipped', () => {
  it.each(farmQuestions)('a model of %s has no faults and computes', (question) => {
    const figure = (key: FigureKey) => {
      const number = counts.includes(key) ? fc.integer({ min: 1, max: 5000 }) : fc.integer({ min: 1, max: 990 });
      return fc.option(
        number.map((n) => (counts.includes(key) ? n : n / 10)),
        { nil: undefined },
      );
    };
    const keys = askedFigures[question].map(({ key }) => key);
    const figures = fc.record(Object.fromEntries(keys.map((key) => [key, figure(key)])));
    fc.assert(
      fc.property(
        figures,
        fc.constantFrom('day', 'week'),
        fc.constantFrom('metric', 'us'),
        (given, timeUnit, system) => {
          const known = Object.fromEntries(Object.entries(given).filter(([, value]) => value !== undefined));
          const model = farmOf(answersOf(known, { question, timeUnit, system, currency: 'NZD' }));
          expect(model.faults).toEqual([]);
          for (const plan of model.plans) {
            const errors = [...evaluatePlan(plan).errors.values()].map(({ message }) => message);
            // A bed too small for one plant finishes none, and what is shared by none cannot be worked out.
            expect(errors.filter((message) => !message.includes('divi'))).toEqual([]);
          }
        },
      ),
      { seed: 3, numRuns: 20 },
    );
  });
});
