import { readFileSync } from 'node:fs';
import { describe, expect, it } from 'vitest';
import { version } from '../../package.json';
import units from '../../shared/units.json';
import { runCommand } from '../../src/cli/run';
import { functions } from '../../src/formula/functions';
import { machineWith } from './machine';

const commands =
  'evaluate tornado breakeven switching grid risk schedule budget enterprise payback check time help'.split(' ');

const noFile = (path: string): never => {
  throw new Error(`no file may be read: ${path}`);
};
const run = (line: string) => runCommand(line.split(' '), machineWith(noFile));

interface Document {
  readonly functions: readonly { name: string; examples: readonly { value: string | boolean }[] }[];
  readonly operators: readonly { sign: string; precedence: number; example: { value: string | boolean } }[];
  readonly units: readonly { name: string; kind: string; factor: string; base: string }[];
  readonly kinds: readonly { kind: string; note: string }[];
  readonly refused: readonly { what: string; refused: string; instead: string }[];
  readonly faults: readonly unknown[];
}

describe('help formulas --json', () => {
  const { status, messages, output } = run('help formulas --json');
  const document = JSON.parse(output) as Document;

  it('is one document, without a fault', () => {
    expect([status, messages]).toEqual([0, '']);
    expect(Object.keys(document)).toEqual(['functions', 'operators', 'units', 'kinds', 'refused', 'faults']);
    expect(document.faults).toEqual([]);
  });

  it('has every function of the records and every unit of the table', () => {
    expect(document.functions.map(({ name }) => name)).toEqual([...functions.keys()]);
    const names = document.units.map(({ name }) => name);
    expect(names).toEqual(expect.arrayContaining(units.units.map(({ name }) => name)));
    expect(document.units.find(({ name }) => name === 'acre')).toEqual({
      name: 'acre',
      kind: 'area',
      factor: '4046.8564224',
      base: 'm^2',
    });
  });

  it('gives values as documents do: numbers as text, truths as they are', () => {
    expect(document.functions[0]?.examples[0]?.value).toBe('3');
    expect(document.operators.find(({ sign }) => sign === '>')?.example).toEqual({
      formula: 'stay > turnaround',
      given: [
        { name: 'stay', number: '2', unit: 'week' },
        { name: 'turnaround', number: '3', unit: 'day' },
      ],
      unit: '',
      value: true,
    });
  });
});

describe('help formulas', () => {
  const { status, messages, output } = run('help formulas');
  const lines = output.split('\n');

  it('is text of at most 100 columns', () => {
    expect([status, messages]).toEqual([0, '']);
    expect(lines.filter((line) => line.length > 100)).toEqual([]);
    expect(lines.filter((line) => line.endsWith(' '))).toEqual([]);
  });

  it.each([
    [
      'a function with its examples',
      '    min(harvest, market) → 900 head/week, with harvest = 1200 head/week, market = 900',
    ],
    ['a sign in its order', '  5  +            Plus. Takes two numbers of one kind'],
    ['units with their exact factors', '  area                    ha = 10000 m^2, acre = 4046.8564224 m^2'],
    ['what is refused', '    refused: 1,5 * heads'],
    ['and what to write instead', '    1.5 * heads → 7500 head/week, with heads = 5000 head/week'],
  ])('has %s', (_claim, beginning) => {
    expect(lines.some((line) => line.startsWith(beginning))).toBe(true);
  });
});

describe('--help', () => {
  it.each(['--help', 'help', '--help --json', '--help --frobnicate'])(
    'of the program, %s: lists every command',
    (line) => {
      const { status, messages, output } = run(line);
      expect([status, messages]).toEqual([0, '']);
      for (const command of commands) expect(output).toMatch(new RegExp(`^  ${command} {2,}\\S`, 'm'));
    },
  );

  it.each(commands)('of a command: %s', (command) => {
    const { status, messages, output } = run(`${command} --help`);
    expect([status, messages]).toEqual([0, '']);
    expect(output).toMatch(new RegExp(`^usage: npm run --silent cli -- ${command} `));
    expect(run(`help ${command}`).output).toBe(output);
  });

  it.each([
    'breakeven farm.csv --help',
    'breakeven --result margin --help',
    'breakeven --help --frobnicate 3',
    '--help breakeven',
  ])('comes before whatever else is said: %s', (line) => {
    expect(run(line)).toEqual(run('breakeven --help'));
  });

  it('lists what a command takes, with the needed options first in its form', () => {
    const { output } = run('budget --help');
    expect(output).toContain('budget MODEL.csv --against NAME\n');
    expect(run('tornado --help').output).toMatch(/--result NAME +the entry to look at \(needed\)\n/);
  });

  it.each([
    ['guess --help', 'command not known: guess.'],
    ['help guess', 'no help on that: guess. There is help on formulas, evaluate, '],
  ])('on what is not there is wrong usage: %s', (line, message) => {
    const { status, messages, output } = run(line);
    expect([status, output]).toEqual([2, '']);
    expect(messages).toContain(message);
  });
});

describe('the example of a command’s help runs:', () => {
  const exampleOf = (command: string): string =>
    /\nexample\n {2}npm run --silent cli -- (.*)\n$/.exec(run(`${command} --help`).output)?.[1] ?? '';

  it.each(commands.map((command) => [exampleOf(command)]))('%s', { timeout: 60_000 }, (example) => {
    const words = [...example.matchAll(/"([^"]*)"|(\S+)/g)].map(([, quoted, bare]) => quoted ?? bare ?? '');
    const { status, messages } = runCommand(
      words,
      machineWith((path) => readFileSync(new URL(`../../${path}`, import.meta.url))),
    );
    expect([status, messages]).toEqual([0, '']);
  });
});

describe('--version', () => {
  it.each(['--version', 'evaluate --version'])('is that of package.json: %s', (line) =>
    expect(run(line)).toEqual({ output: `${version}\n`, messages: '', status: 0 }),
  );
});
