import { describe, expect, it } from 'vitest';
import { runCommand } from '../../src/cli/run';
import { machineWith } from './machine';

const farm = `name,label,unit,formula,low,high,shape,correlation,plan: Today,plan: Nursery
,An invented farm,,,,,,,,
wage,Wage,EUR/h,15,12,20,,,,
seconds,Seconds a plant,s/plant,12,8,20,pert,,0,
plants,Plants a year,plant/year,100000,,,,,,120000
price,Price,EUR/plant,0.5,0.4,0.6,normal,,,
kept,Kept,%,97,95,99.5,normal,,,
margin,Margin,EUR/year,plants * (price * kept - seconds * wage),,,,,,
odd,Odd,,sqrt(swing),,,,,,
swing,Swing,,1,-1,3,uniform,,,
still,Still,,2 * steady,,,,,,
steady,Steady,,1,,,,,,
broken,Broken,,1 / zero,,,,,,
zero,Zero,,0,,,,,,
`;

interface Document {
  readonly draws: number;
  readonly failed: number;
  readonly mean: string | null;
  readonly sd: string | null;
  readonly percentiles: Readonly<Record<string, string | null>>;
  readonly chance_above_target: string | null;
  readonly index_draws: number | null;
  readonly indices: readonly Readonly<Record<string, string>>[] | null;
  readonly indices_reason?: string;
  readonly value_of_information: { readonly all: string; readonly each: readonly { name: string; value: string }[] };
  readonly failures?: readonly unknown[];
  readonly outside_0_to_100?: readonly { name: string; draws: number }[];
  readonly faults: readonly unknown[];
}

function run(line: string, file = farm) {
  const { output, messages, status } = runCommand(
    line.split(' '),
    machineWith(() => new TextEncoder().encode(file)),
  );
  return { status, messages, output, document: (output.startsWith('{') ? JSON.parse(output) : {}) as Document };
}

const ask = (options: string, file = farm) => run(`risk farm.csv --json --draws 2000 ${options}`, file);

describe('the document', () => {
  const { document, status } = ask('--result margin');

  it('has exactly the agreed parts', () => {
    expect(status).toBe(0);
    expect(Object.keys(document).filter((key) => key !== 'outside_0_to_100')).toEqual([
      'draws',
      'failed',
      'mean',
      'sd',
      'percentiles',
      'chance_above_target',
      'index_draws',
      'indices',
      'value_of_information',
      'faults',
    ]);
    expect(Object.keys(document.percentiles)).toEqual(['p5', 'p10', 'p25', 'p50', 'p75', 'p90', 'p95']);
    expect(document.indices?.map((index) => Object.keys(index))[0]).toEqual([
      'name',
      'first',
      'first_error',
      'total',
      'total_error',
    ]);
    expect([document.draws, document.failed, document.index_draws]).toEqual([2000, 0, 512]);
  });

  it('names the inputs in file order, in both lists', () => {
    const names = ['wage', 'seconds', 'price', 'kept'];
    expect(document.indices?.map(({ name }) => name)).toEqual(names);
    expect(document.value_of_information.each.map(({ name }) => name)).toEqual(names);
  });

  it('holds numbers as decimal strings', () => {
    const texts = [document.mean, document.sd, document.chance_above_target, document.value_of_information.all];
    for (const text of texts) expect(text).toMatch(/^-?\d+(\.\d+)?(e-?\d+)?$/);
  });

  it('says of a share how many draws lie outside 0 to 100 %', () => {
    const [kept] = document.outside_0_to_100 ?? [];
    expect(kept?.name).toBe('kept');
    expect(kept?.draws).toBeGreaterThan(0);
  });

  it('is the same for the same seed, 0 included, and another for another', () => {
    const outputs = ['', '--seed 1', '--seed 0', '--seed 0', '--seed 2'].map(
      (seed) => ask(`--result margin ${seed}`.trim()).output,
    );
    expect(outputs[0]).toBe(outputs[1]);
    expect(outputs[2]).toBe(outputs[3]);
    expect(new Set(outputs).size).toBe(3);
  });

  it('draws a hundred thousand where nothing is said', () => {
    expect(run('risk farm.csv --json --result still').document.draws).toBe(100_000);
  });
});

describe('what it finds', () => {
  it('against another plan only what differs counts', () => {
    const { document } = ask('--result margin --against Today');
    expect(document.value_of_information.each.map(({ name }) => name)).toEqual(['wage', 'seconds', 'price', 'kept']);
    expect(Number(document.mean)).toBeLessThan(10_000);
  });

  it('a chance is counted above the target', () => {
    const chance = (target: number): number =>
      Number(ask(`--result margin --target ${target}`).document.chance_above_target);
    const median = Number(ask('--result margin').document.percentiles['p50']);
    expect([chance(-1e9), chance(median), chance(1e9)]).toEqual([1, 0.5, 0]);
  });

  it('a constant result: no spread, indices none, nothing worth knowing', () => {
    const { document } = ask('--result still');
    expect([document.mean, document.sd, document.indices]).toEqual(['2', '0', []]);
    expect(document.value_of_information).toEqual({ all: '0', each: [] });
  });

  it('correlated inputs: no indices, and why', () => {
    const { document } = ask('--result margin', farm.replace('15,12,20,,,', '15,12,20,,price 0.5,'));
    expect([document.index_draws, document.indices]).toEqual([null, null]);
    expect(document.indices_reason).toBe('indices need inputs without correlation: wage and price have one.');
  });

  it('draws that cannot be computed: how many, where and by what, and the rest goes on', () => {
    const { document, status } = ask('--result odd');
    expect(status).toBe(0);
    expect(document.failed).toBeGreaterThan(400);
    expect(document.failures).toEqual([
      { cell: 'odd', code: 'domain', message: 'square root of a negative number', share: '1', inputs: ['swing'] },
    ]);
    expect(document.mean).not.toBeNull();
  });

  it('a result that is never known: nulls, and status 1', () => {
    const { document, status } = ask('--result broken');
    expect([status, document.failed, document.mean, document.chance_above_target]).toEqual([1, 2000, null, null]);
  });

  it('one draw', () => {
    const { document } = run('risk farm.csv --json --draws 1 --result margin');
    expect([document.draws, document.sd, document.percentiles['p5']]).toEqual([1, null, document.mean]);
  });
});

describe('for people', () => {
  it('there are two tables: what draws come to, and the inputs, the strongest first', () => {
    const { output } = run('risk farm.csv --draws 2000 --result margin');
    expect(output).toMatch(/^draws +2000\n/);
    expect(output).toMatch(/standard error of the mean +\S+ +EUR\/year\n/);
    expect(output).toMatch(/\ninput +first +error +total +error +worth of knowing \(EUR\/year\)\nprice /);
    expect(output).toMatch(/\noutside 0 to 100 %: kept in \d+ draws\n$/);
  });

  it('it is said why there are no indices, and what could not be computed', () => {
    const correlated = farm
      .replace('1,-1,3,uniform,,', '1,-1,3,uniform,steady 0.1,')
      .replace('steady,Steady,,1,,', 'steady,Steady,,1,0,2');
    const { output } = run(
      'risk farm.csv --draws 2000 --result odd',
      correlated.replace('sqrt(swing)', 'steady + sqrt(swing)'),
    );
    expect(output).toContain('indices need inputs without correlation: swing and steady have one.\n');
    expect(output).toContain('not computed: square root of a negative number in odd, 100 % of these draws, by swing\n');
  });
});

describe('wrong usage', () => {
  it.each([
    ['risk farm.csv', '--result'],
    ['risk farm.csv --result nope', 'name not known'],
    ['risk farm.csv --result margin --draws 0', '--draws not a whole number from 1 to 10000000: 0.'],
    ['risk farm.csv --result margin --draws 1.5', '--draws'],
    ['risk farm.csv --result margin --draws 10000001', '--draws'],
    ['risk farm.csv --result margin --seed -1', '--seed not a whole number from 0'],
    ['risk farm.csv --result margin --seed x', '--seed'],
    ['risk farm.csv --result margin --target x', '--target'],
    ['tornado farm.csv --result margin --draws 5', 'option not for tornado: --draws'],
  ])('%s', (line, message) => {
    const { status, messages, output } = run(line);
    expect([status, output]).toEqual([2, '']);
    expect(messages).toContain(message);
  });
});
