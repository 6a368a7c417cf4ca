import { describe, expect, it } from 'vitest';
import { runCommand } from '../../src/cli/run';
import { machineWith } from './machine';

const machine = `name,label,unit,formula,low,high,budget,plan: By hand,plan: By machine
machine,Machine,USD,0,,,,,1000
spares,Spares,thousand*USD,0,,,,,0.2
saving,Saving,USD/year,300,200,400,,,
hands,Hands,USD/year,saving,,,cost,,0
grant,Grant,USD/month,0,,,return,,
none,None,,0,,,,,
`;

interface Document {
  readonly odds: { readonly worth_more: string; readonly paid_back: string; readonly seed: number } | null;
  readonly lines: readonly Readonly<Record<string, unknown>>[];
  readonly faults: readonly { readonly message: string }[];
  readonly [name: string]: unknown;
}

function run(words: string, file = machine) {
  const bytes = new TextEncoder().encode(file);
  const found = runCommand(
    ['payback', 'm.csv', '--against', 'By hand', ...words.split(' ').filter(Boolean)],
    machineWith(() => bytes),
  );
  return { ...found, document: (found.output.startsWith('{') ? JSON.parse(found.output) : {}) as Document };
}

describe('payback --json', () => {
  it('has its parts in order, numbers as text', () => {
    const { status, messages, document } = run('--outlay 1000 --years 2 --rate 0 --json');
    expect([status, messages]).toEqual([0, '']);
    expect(document).toEqual({
      unit: 'USD',
      outlay: '1000',
      gain: '300',
      years: 2,
      rate: '0',
      left: '0',
      net_present_value: '-400',
      annual_equivalent: '-200',
      annuity_factor: '2',
      simple_payback: null,
      discounted_payback: null,
      // (300 + √1,290,000) ÷ 2,000 − 1.
      internal_rate: '-28.2109165419973',
      internal_rates: 'one',
      lines: [
        { year: 0, what: 'outlay', amount: '-1000', factor: '1', present: '-1000', cumulative: '-1000' },
        { year: 1, what: 'gain', amount: '300', factor: '1', present: '300', cumulative: '-700' },
        { year: 2, what: 'gain', amount: '300', factor: '1', present: '300', cumulative: '-400' },
      ],
      odds: null,
      faults: [],
    });
  });

  it.each([
    ['--outlay 1000', '1000'],
    ['--bought machine', '1000'],
    ['--bought machine,spares', '1200'],
    ['--outlay -50', '-50'],
  ])('takes the outlay by %s', (words, outlay) => expect(run(`${words} --json`).document['outlay']).toBe(outlay));

  it.each([
    ['nothing is paid', '--outlay 0', ['0', '0', 'none']],
    ['money is freed', '--outlay -50', ['0', '0', 'none']],
    [
      'it is paid in time',
      '--outlay 1000 --rate 0',
      ['3.333333333333333333333333333333333', '3.333333333333333333333333333333333', 'one'],
    ],
    [
      'money turns round twice',
      '--outlay 1000 --left -2000',
      ['3.333333333333333333333333333333333', '3.7415', 'several'],
    ],
  ])('says when it is paid back where %s', (_where, words, [simple, discounted, rates]) => {
    const { document } = run(`${words} --json`);
    expect(document['simple_payback']).toBe(simple);
    expect(String(document['discounted_payback']).startsWith(discounted!)).toBe(true);
    expect(document['internal_rates']).toBe(rates);
  });

  it('has a line for what is left at the end', () => {
    const { document } = run('--outlay 1000 --years 1 --left 55 --rate 10 --json');
    expect(document.lines.at(-1)).toMatchObject({ year: 1, what: 'left', amount: '55', present: '50' });
  });

  it('counts the odds in seeded draws, and draws the outlay where it has a range', () => {
    // Paid back in 10 years without interest with 100 a year or more: in every draw from 200 to 400.
    const sure = run('--outlay 1000 --rate 0 --draws 500 --json').document.odds;
    expect(sure).toEqual({
      draws: 500,
      seed: 1,
      worth_more: '1',
      paid_back: '1',
      outlay_low: null,
      outlay_high: null,
    });
    const words = '--outlay 3000 --rate 0 --draws 5000 --json';
    const [certain, ranged, again, other] = [
      words,
      `${words} --outlay-low 1000 --outlay-high 5000`,
      `${words} --outlay-low 1000 --outlay-high 5000`,
      `${words} --outlay-low 1000 --outlay-high 5000 --seed 2`,
    ].map((line) => run(line).document.odds!);
    expect(Number(certain!.worth_more)).toBeCloseTo(0.5, 1);
    expect(ranged).toEqual(again);
    expect(other!.worth_more).not.toBe(ranged!.worth_more);
    expect(ranged!.worth_more).not.toBe(certain!.worth_more);
  });
});

describe('payback for people', () => {
  it('says the terms, the answer and the years', () => {
    const { output, status } = run('--outlay 1000 --years 2 --rate 0 --draws 100');
    expect(status).toBe(0);
    expect(output).toMatch(/^outlay +1000 {2}USD$/m);
    expect(output).toMatch(/^payback with interest +not in these years$/m);
    expect(output).toMatch(/^ +2 {2}gain of the year +300 +1 +300 +-400$/m);
    expect(output).toMatch(/^worth more than it costs +0 %$/m);
    expect(output.endsWith('of 100 draws from all ranges, seed 1, the outlay taken as certain\n')).toBe(true);
  });
});

describe('a gain or an outlay that is not known', () => {
  it.each([
    ['a line of the budget', machine.replace('USD/year,saving', 'USD/year,saving / none'), '--outlay 5'],
    [
      'what is bought',
      machine.replace('machine,Machine,USD,0,,,,,1000', 'machine,Machine,USD,saving * none / none,,,,,'),
      '--bought machine',
    ],
  ])('%s: nulls, the reason, and exit status 1', (_what, file, words) => {
    const { status, messages, document } = run(`${words} --json`, file);
    expect(status).toBe(1);
    expect(document['net_present_value']).toBeNull();
    expect(document.lines).toEqual([]);
    expect(messages).toMatch(/at today’s values in plan By hand\./);
    expect(run(words, file).output).toContain('yearly gain');
  });
});

describe('wrong usage exits with 2 and says what would be right', () => {
  it.each([
    ['', 'no outlay: give either --outlay, an amount, or --bought'],
    ['--outlay 5 --bought machine', 'two outlays: give either'],
    ['--outlay 3,5', '--outlay: '],
    ['--bought machin', 'no amount in USD in --bought: machin. Did you mean machine?'],
    ['--bought hands', 'no amount in USD in --bought: hands. The model has machine, spares.'],
    ['--outlay 5 --years 0', '--years not a whole number from 1 to 100: 0.'],
    ['--outlay 5 --years 2.5', '--years not a whole number from 1 to 100: 2.5.'],
    ['--outlay 5 --rate -100', 'no rate above −100 % a year: -100.'],
    ['--outlay 5 --outlay-low 3', 'half a range of the outlay: give both'],
    ['--outlay 5 --outlay-low 9 --outlay-high 3', '--outlay-low not below --outlay-high: 9. Swap them.'],
    ['--outlay 5 --outlay-low 6 --outlay-high 9', 'outlay outside its range: 5.'],
    ['--outlay 5 --draws 0', '--draws not a whole number from 1 to 10000000: 0.'],
  ])('%s', (words, message) => {
    const { status, output, messages } = run(words);
    expect([status, output]).toEqual([2, '']);
    expect(messages).toContain(message);
    const { document } = run(`${words} --json`);
    expect(document.faults[0]?.message).toContain(message);
  });

  it('a model without budget lines, and a call without the other plan', () => {
    expect(run('--outlay 5', machine.replace('cost', '').replace('return', '')).messages).toContain(
      'no yearly budget:',
    );
    const { messages } = runCommand(
      ['payback', 'm.csv', '--outlay', '5'],
      machineWith(() => new TextEncoder().encode(machine)),
    );
    expect(messages).toContain('option missing: --against.');
  });
});
