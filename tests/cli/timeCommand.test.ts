import { readFileSync } from 'node:fs';
import { describe, expect, it } from 'vitest';
import { runCommand } from '../../src/cli/run';
import { toDecimals } from '../../src/core/rounded';
import { decimal } from '../../src/core/number';
import { readTrials } from '../../src/files/readTrials';
import { readme, Shipped } from '../models/shipped';
import { machineWith } from './machine';

const trials = `step,plants,seconds,worker,rating,lost
moving,10,90,A,100,0
washing,4,80,B,,
moving,10,110,B,,1
`;

interface Entry {
  readonly step: string;
  readonly batches: number;
  readonly seconds_per_plant: string;
  readonly sd: string | null;
  readonly ci: readonly [string, string] | null;
  readonly standard_time: string;
  readonly trials_needed: number | null;
}

function run(words: string, file = trials) {
  const bytes = new TextEncoder().encode(file);
  return runCommand(
    ['time', 'trials.csv', ...words.split(' ').filter(Boolean)],
    machineWith(() => bytes),
  );
}

function entries(words = '', file = trials): Entry[] {
  return JSON.parse(run(`--json ${words}`, file).output) as Entry[];
}

describe('time', () => {
  it('gives a list, one entry a step in file order, with the keys of the contract in order', () => {
    const { status, messages, output } = run('--json');
    expect([status, messages]).toEqual([0, '']);
    const found = JSON.parse(output) as unknown[];
    // t with 1 degree of freedom is cot 0.025π = 12.7062047…; SE = √2/√2 = 1; needed = (1.959964 × √2 / 0.5)² = 30.73….
    expect(found).toEqual([
      {
        step: 'moving',
        batches: 2,
        plants: 20,
        seconds_per_plant: '10',
        sd: '1.414213562373095048801688724209698',
        ci: [expect.stringMatching(/^-2\.70620473617\d+$/), expect.stringMatching(/^22\.70620473617\d+$/)],
        standard_time: '11.5',
        trials_needed: 31,
      },
      {
        step: 'washing',
        batches: 1,
        plants: 4,
        seconds_per_plant: '20',
        sd: null,
        ci: null,
        standard_time: '23',
        trials_needed: null,
      },
    ]);
    expect(Object.keys(found[0] as object)).toEqual([
      'step',
      'batches',
      'plants',
      'seconds_per_plant',
      'sd',
      'ci',
      'standard_time',
      'trials_needed',
    ]);
  });

  it('writes numbers with 34 digits at most', () => {
    const [entry] = entries('', 'step,plants,seconds\nmoving,3,10\nmoving,7,21.01\nmoving,11,40\n');
    const numbers = [entry!.seconds_per_plant, entry!.sd, ...entry!.ci!, entry!.standard_time];
    for (const text of numbers) {
      expect(text).toMatch(/^-?\d+(\.\d+)?$/);
      expect(text!.replace(/^-?0?\.?0*|\./g, '').length).toBeLessThanOrEqual(34);
    }
  });

  it('gives one step alone where it is named', () => {
    const bytes = new TextEncoder().encode('step,plants,seconds\nplug setting,3,10\nmoving,7,20\n');
    const { output } = runCommand(
      ['time', 'x.csv', '--step', 'plug setting', '--json'],
      machineWith(() => bytes),
    );
    expect((JSON.parse(output) as Entry[]).map(({ step }) => step)).toEqual(['plug setting']);
  });

  it.each([
    ['', '11.5'],
    ['--allowance 20', '12'],
    ['--allowance 20 --allowance-of job', '12'],
    ['--allowance 20 --allowance-of day', '12.5'],
    ['--allowance 0 --allowance-of day', '10'],
    ['--allowance 150', '25'],
    ['--allowance 12.5', '11.25'],
  ])('standard time with %j is %s', (words, expected) => expect(entries(words)[0]?.standard_time).toBe(expected));

  it.each([
    ['', 31],
    ['--within 10', 8],
    ['--within 2.5', 123],
    ['--confidence 99', 54],
    ['--confidence 50', 4],
  ])('batches needed with %j are %d', (words, expected) => expect(entries(words)[0]?.trials_needed).toBe(expected));

  it('the interval follows the confidence, and nothing else', () => {
    const wide = Number(entries('--confidence 99')[0]?.ci?.[1]) - 10;
    expect(wide).toBeCloseTo(63.6567411629, 9);
    expect(entries('--within 1 --allowance 30')[0]?.ci).toEqual(entries()[0]?.ci);
  });

  it('prints an aligned table for people, with a dash for what one batch cannot say', () => {
    expect(run('').output.split('\n')).toEqual([
      'step     batches  plants  seconds per plant        from         to  standard time  batches needed',
      'moving         2      20                 10  -2.7062047  22.706205           11.5              31',
      'washing        1       4                 20           —          —             23               —',
      '',
      'from, to: 95 % confidence interval of the seconds per plant',
      'standard time: with an allowance of 15 % of the job',
      'batches needed: in all, for 5 % either way at 95 % confidence',
      '',
    ]);
  });

  it('reads decimal commas between semicolons, and says so', () => {
    const { status, messages, output } = run('--json', 'step;plants;seconds\nmoving;4;50,5\n');
    expect([status, (JSON.parse(output) as Entry[])[0]?.seconds_per_plant]).toEqual([0, '12.625']);
    expect(messages).toContain('row 2: decimal commas read as decimal points: 50,5');
  });
});

describe('a fault in the file', () => {
  const faulty = `${trials}moving,10,soon,A,,\nrowing,0,10,A,,\n`;

  it('is told on standard error and by exit status 1; the rest is computed without the row', () => {
    const { status, messages } = run('--json', faulty);
    expect(status).toBe(1);
    expect(messages).toBe(
      'row 5: in seconds, not a number: soon. Write digits with a point for decimals.\n' +
        'row 6: plants not a whole number above 0: 0. Count the plants of the batch.\n',
    );
    expect(entries('', faulty)).toEqual(entries());
  });

  it('may leave nothing of the step asked for', () => {
    const { status, output } = run('--step rowing --json', faulty);
    expect([status, output]).toEqual([1, '[]\n']);
  });

  it.each([
    ['nothing in it', '', 'empty file'],
    ['a model instead of trials', 'name,formula\na,1\n', 'a model file, not a trials file: name, formula'],
    ['a header alone', 'step,plants,seconds\n', 'no trials'],
  ])('%s: an empty list', (_, file, message) => {
    const { status, output, messages } = run('--json', file);
    expect([status, output]).toEqual([1, '[]\n']);
    expect(messages).toContain(message);
    expect(run('', file).output).toBe('');
  });
});

describe('wrong usage exits with 2 and says what would be right', () => {
  it.each([
    ['--allowance -1', '--allowance below 0: -1'],
    ['--allowance much', '--allowance: not a number: much'],
    ['--allowance 100 --allowance-of day', '--allowance is the whole day: 100. Stay below 100.'],
    ['--allowance-of week', '--allowance-of not known: week. Use job or day.'],
    ['--within 0', '--within not above 0: 0'],
    ['--within -5', '--within not above 0: -5'],
    ['--confidence 0', '--confidence not between 0 and 100: 0'],
    ['--confidence 100', '--confidence not between 0 and 100: 100'],
    ['--step movin', 'step not known: movin. Did you mean moving?'],
    ['--step harvest', 'step not known: harvest. The file has moving, washing.'],
    ['--plan Today', 'option not for time: --plan. Leave it out.'],
    ['--against Today', 'option not for time: --against. Leave it out.'],
    ['--set wage=3', 'option not for time: --set. Leave it out.'],
    ['--result margin', 'option not for time: --result. Leave it out.'],
  ])('%s', (words, message) => {
    const { status, output, messages } = run(words);
    expect([status, output]).toEqual([2, '']);
    expect(messages).toContain(message);
  });

  it('a command of a model takes no option of time', () => {
    const { status, messages } = runCommand(
      ['evaluate', 'farm.csv', '--step', 'moving'],
      machineWith(() => new Uint8Array()),
    );
    expect([status, messages.split('\n')[0]]).toEqual([2, 'option not for evaluate: --step. Leave it out.']);
  });
});

describe('models/trials/transplant-trials.csv', () => {
  const bytes = readFileSync(new URL('../../models/trials/transplant-trials.csv', import.meta.url));
  const { output, status, messages } = runCommand(
    ['time', 'trials.csv', '--json'],
    machineWith(() => bytes),
  );
  const found = JSON.parse(output) as Entry[];

  it('is sound', () => expect([status, messages]).toEqual([0, '']));

  it('says of each step that it is invented', () => {
    const { batches } = readTrials(bytes);
    const first = found.map(({ step }) => batches.find((batch) => batch.step === step)!);
    expect(first.map(({ note }) => note.split(/[ .]/)[0])).toEqual(first.map(() => 'Invented'));
  });

  it.each([
    ['plug setting', 'setting_time'],
    ['transplanting', 'transplant_time'],
    ['harvest and packing', 'harvest_time'],
    ['board washing', 'washing_time'],
  ])('%s lies in the range of %s, and off the value there', (step, cell) => {
    const model = new Shipped('transplant-hire');
    const [, low, high] = model.ranges().find(([name]) => name === cell)!;
    const today = model.rows.find((row) => row.get('name') === cell)?.get('formula');
    const seconds = Number(found.find((entry) => entry.step === step)?.seconds_per_plant);
    expect(seconds).toBeGreaterThan(Number(low));
    expect(seconds).toBeLessThan(Number(high));
    expect(seconds).not.toBe(Number(today));
  });

  it('has the figures that models/README.md gives for it', () => {
    const section = readme.split(/^## /m).find((text) => text.startsWith('trials/transplant-trials.csv\n')) ?? '';
    const lines = section.split('\n').map((line) =>
      line
        .split('|')
        .slice(1, -1)
        .map((text) => text.trim()),
    );
    const told = found.map(({ step }) => lines.find(([name]) => name === step));
    const round = (text: string): string => toDecimals(decimal(text), 2);
    expect(told).toEqual(
      found.map(({ step, batches, seconds_per_plant, ci, trials_needed }) => [
        step,
        String(batches),
        round(seconds_per_plant),
        `${round(ci![0])} to ${round(ci![1])}`,
        String(trials_needed),
      ]),
    );
  });
});
