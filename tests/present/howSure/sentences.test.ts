import { describe, expect, it } from 'vitest';
import { textOf, type Phrase } from '../../../src/present/text/phrase';
import { createFormat } from '../../../src/present/text/numberFormat';
import { againstBars, driversOf, driversSentence, tiedSentence } from '../../../src/present/howSure/drivers';
import { average, remarks, sentence, type SpreadQuestion } from '../../../src/present/howSure/sentences';
import { knownInputValues, worthSentence } from '../../../src/present/howSure/informationValue';
import { summaryOf } from '../../../src/present/howSure/summary';
import { idOf, modelOf } from '../../model/table';
import { farm, reports } from './farm';

const english = createFormat('en-GB');
const model = modelOf('r [EUR/year]: 1 | label: Margin');
const result = model.cells[idOf(model, 'r')]!;
const difference: SpreadQuestion = {
  result,
  of: { kind: 'difference', plan: 'Nursery first', against: 'Straight' },
  target: 0,
};
const own: SpreadQuestion = { result, of: { kind: 'plan', plan: 'Nursery first', alone: false }, target: 5000 };
const plain = (phrase: Phrase): string => textOf(phrase).replaceAll('\u00a0', ' ');
/** -2,600 to 7,400 evenly: 74 of 100 lie above 0. */
const even = Float64Array.from({ length: 10_001 }, (_, i) => i - 2600);

describe('draws say', () => {
  it('how often a plan is better and where the difference lies', () => {
    expect(plain(sentence(difference, summaryOf(even, 0), english))).toBe(
      'Nursery first pays in 74 of 100 draws; the difference in Margin lies between \u22122,100 and 6,900 EUR a year in 90 of 100.',
    );
  });
  it('how often one plan is above a target', () => {
    expect(plain(sentence(own, summaryOf(even, 5000), english))).toBe(
      'Margin in Nursery first is above 5,000 EUR a year in 24 of 100 draws; it lies between \u22122,100 and 6,900 EUR a year in 90 of 100.',
    );
  });
  it('how often both plans are equal', () => {
    const ties = Float64Array.from([-1, 0, 0, 0, 0, 0, 1, 2, 3, 4]);
    expect(plain(sentence(difference, summaryOf(ties, 0), english))).toContain(
      'pays in 40 of 100 draws and both are equal in 50 of 100 draws;',
    );
  });
  it('one value where nothing spreads', () => {
    expect(plain(sentence(own, summaryOf(new Float64Array(9).fill(6000), 5000), english))).toBe(
      'Margin in Nursery first is above 5,000 EUR a year in every draw; it is 6,000 EUR a year in 90 of 100.',
    );
  });
  it('the mean and what the number of draws leaves open', () => {
    expect(plain(average(summaryOf(even, 0), difference, english))).toBe(
      'On average it is 2,400 EUR a year, give or take 30 that more draws would settle.',
    );
    expect(plain(average(summaryOf(Float64Array.of(3), 0), difference, english))).toContain('One draw says nothing');
  });
  it('what could not be computed and why', () => {
    const { last, model: poles } = reports('x: 1 | range: -1 3 uniform | label: Gap\nr: sqrt(x)', { draws: 8000 });
    expect(plain(remarks(last, poles.cells))).toMatch(
      /^In 2\d of 100 draws it cannot be computed.*It comes from Gap\.$/,
    );
  });
  it('that a share was drawn outside its limits', () => {
    const { last, model: shares } = reports('x [%]: 90 | range: 85 99 normal | label: Kept\nr: x * 2', { draws: 8000 });
    expect(plain(remarks(last, shares.cells))).toMatch(/^Kept was drawn outside 0 to 100 % in \d of 100 draws/);
  });
});

describe('the spread says', () => {
  it('which entry drives it', () => {
    const { last, model: two } = reports(
      'x: 1 | range: 0 6 uniform | label: Price\ny: 1 | range: 0 2 uniform | label: Wage\nr: x + y',
    );
    const drivers = driversOf(last.indices!, two.cells);
    expect(drivers.map(({ cell }) => cell.label)).toEqual(['Price', 'Wage']);
    // The variances are 3 and 1/3: Price explains nine tenths.
    expect(plain(driversSentence(drivers, english))).toBe(
      'Price drives the spread most: know it, and 90 % of the spread goes away.',
    );
  });
  it('that entries act together', () => {
    const { last, model: two } = reports('x: 1 | range: -1 1 uniform\ny: 1 | range: -1 1 uniform\nr: x * y');
    expect(plain(driversSentence(driversOf(last.indices!, two.cells), english))).toMatch(
      /(?:99|100|101) % comes from entries acting together\.$/,
    );
  });
  it('that nothing can be shared out where the numbers are too large for it', () => {
    const { last, model: two } = reports('x: 1 | range: -1 1e300 uniform\ny: 1 | range: -1 1 uniform\nr: x + y');
    const drivers = driversOf(last.indices!, two.cells);
    expect(plain(driversSentence(drivers, english))).toBe(
      'The spread cannot be shared out among the entries: its numbers are too large to be squared.',
    );
    expect(againstBars(drivers[0]?.cell, drivers)).toEqual([]);
  });
  const cells = modelOf(farm).cells;
  const tied = (pairs: readonly (readonly [number, number])[], apart: boolean): string =>
    plain(tiedSentence({ points: 512, found: [], tied: pairs }, cells, apart));
  it('nothing of ties where there are none', () => expect(tied([], false)).toBe(''));
  it('which entries the file ties, and that it forbids sharing out', () => {
    expect(tied([[0, 1]], false)).toContain('the file ties Price with Wage, so what one of two explains');
  });
  it('that shares as if drawn apart are not those of the file', () => {
    expect(
      tied(
        [
          [0, 1],
          [1, 2],
        ],
        true,
      ),
    ).toBe('The file ties Price with Wage and Wage with extra; these shares treat them as apart.');
  });
  it('how many more are tied', () => {
    expect(
      tied(
        [
          [0, 1],
          [0, 2],
          [1, 2],
          [2, 3],
          [0, 3],
        ],
        true,
      ),
    ).toContain('Wage with extra and 2 more;');
  });
});

describe('beside the bars, what drives the spread', () => {
  const cells = modelOf(farm).cells;
  const driver = (cell: number, total: number): ReturnType<typeof driversOf>[number] => ({
    cell: cells[cell]!,
    name: cells[cell]!.label,
    first: total,
    firstError: 0.01,
    total,
    totalError: 0.01,
  });
  it.each([
    ['may be the same entry', 0, [driver(0, 0.8), driver(1, 0.2)], 'The bars say the same: Price has the longest.'],
    [
      'may be another one',
      1,
      [driver(0, 0.8), driver(1, 0.2)],
      'Wage has the longest bar, but Price drives the spread more',
    ],
    [
      'may be too near to tell',
      1,
      [driver(0, 0.51), driver(1, 0.49)],
      'Wage has the longest bar, and no share stands clear of its own.',
    ],
  ])('%s', (_claim, longest, drivers, said) => expect(plain(againstBars(cells[longest], drivers))).toContain(said));
  it('is not told where nothing drives it or there is no bar', () => {
    expect(againstBars(cells[0], [driver(0, 0)])).toEqual([]);
    expect(againstBars(undefined, [driver(0, 1)])).toEqual([]);
  });
});

describe('the worth of measuring says', () => {
  const cells = modelOf(farm).cells;
  const details = { failures: [], outside: [], knowingAll: { value: 2325, error: 13 } };
  const say = (each: readonly { cell: number; value: number; error: number }[], all = 2325): string => {
    const known = { ...details, knowingAll: { value: all, error: 13 }, knowingEach: each };
    return plain(worthSentence(known, knownInputValues(known, cells), result, english));
  };
  it('what to find out first', () => {
    expect(
      say([
        { cell: 1, value: 120, error: 9 },
        { cell: 0, value: 423, error: 9 },
      ]),
    ).toBe(
      'Find out Price before Wage: knowing it before you choose is worth up to 420 EUR a year. ' +
        'Knowing everything would be worth 2,300 EUR a year; a trial that costs more does not pay.',
    );
  });
  it('which of two entries with the same label it means', () => {
    const twice = modelOf('a: 1 | label: Rent | group: Hall\nb: 2 | label: Rent | group: Nursery').cells;
    const known = { ...details, knowingEach: [{ cell: 1, value: 120, error: 9 }] };
    expect(knownInputValues(known, twice).map(({ name }) => name)).toEqual(['Rent (Nursery)']);
    expect(plain(worthSentence(known, knownInputValues(known, twice), result, english))).toMatch(
      /^Find out Rent \(Nursery\): /,
    );
  });
  it('that a worth within its error is none', () => {
    expect(say([{ cell: 0, value: 12, error: 9 }])).toContain('No entry is worth measuring by itself');
  });
  it('that nothing would change the choice', () => {
    expect(say([{ cell: 0, value: 0, error: 0 }], 0)).toBe(
      'Nothing is worth measuring for this choice: no draw would change it.',
    );
  });
});
