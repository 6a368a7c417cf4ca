import { describe, expect, it } from 'vitest';
import { runCommand } from '../../src/cli/run';
import { machineWith } from './machine';

const farm = `name,label,unit,formula,low,high,role,budget,plan: Today,plan: Nursery
,An invented farm,,,,,,,,
wage,Wage,EUR/h,15,12,20,,,,
seconds,Seconds a plant,s/plant,12,8,20,,,0,
plants,Plants a year,plant/year,100000,,,,,,120000
price,Price,EUR/plant,0.5,0.4,0.6,,,,
sales,Sales,EUR/year,plants * price,,,,return,,
hands,Hands,EUR/year,plants * seconds * wage,,,,cost,,
margin,Margin,EUR/year,sales - hands,,,headline,,,
pays,The plants cost more than they bring,,margin > 0,,,check,,,
`;

/** The parts of any command's document that these tests look into. */
interface Document {
  readonly cells: Readonly<Record<string, { value: unknown; unit: string; error: unknown }>>;
  readonly bars: readonly unknown[];
  readonly checks: readonly unknown[];
  readonly crossings: readonly unknown[];
  readonly holds: unknown;
  readonly base: unknown;
  readonly inputs: readonly { name: string; base: string; switch: string; all: string[]; change_percent: string }[];
  readonly faults: readonly { code: string }[];
}

interface Ran {
  readonly status: number;
  readonly messages: string;
  readonly output: string;
  readonly document: Document;
}

/** Runs a command line on a file, words parted by blanks; a word in quotes may hold blanks. */
function run(line: string, file = farm): Ran {
  const words = [...line.matchAll(/"([^"]*)"|(\S+)/g)].map(([, quoted, bare]) => quoted ?? bare ?? '');
  const bytes = new TextEncoder().encode(file);
  const { output, messages, status } = runCommand(
    words,
    machineWith((path) => {
      if (path !== 'farm.csv') throw new Error('no such file');
      return bytes;
    }),
  );
  const document = (output.startsWith('{') ? JSON.parse(output) : {}) as Document;
  return { status, messages, output, document };
}

describe('evaluate', () => {
  it('gives the last plan column unless another is named', () => {
    expect(run('evaluate farm.csv --json').document).toMatchObject({
      plan: 'Nursery',
      cells: { margin: { value: '54000', unit: 'EUR/year', error: null }, pays: { value: true } },
      checks: [{ name: 'pays', holds: true }],
      faults: [],
    });
    expect(run('evaluate farm.csv --plan Today --json').document.cells['margin']?.value).toBe('50000');
  });

  it('gives differences against another plan, truths as they are', () => {
    const { document, status } = run('evaluate farm.csv --against Today --json');
    expect(document.cells['margin']?.value).toBe('4000');
    expect(document.cells['pays']?.value).toBe(true);
    expect(status).toBe(0);
  });

  it.each([
    ['the shared number', 'wage=16', 'Nursery', '53600'],
    ['a number with an exponent', 'wage=1.6e1', 'Nursery', '53600'],
    ['a negative number', 'price=-1', 'Today', '-100000'],
    ["a plan's own number", 'plants=1000', 'Nursery', '450'],
  ])('--set changes %s', (_, setting, plan, margin) => {
    const { document } = run(`evaluate farm.csv --plan ${plan} --set ${setting} --json`);
    expect(document.cells['margin']?.value).toBe(margin);
  });

  it('--set can be repeated, and what it takes outside a range is no fault', () => {
    const { document, status } = run('evaluate farm.csv --set wage=10 --set seconds=30 --json');
    expect(document.cells['hands']?.value).toBe('10000');
    expect(document.faults).toEqual([]);
    expect(status).toBe(0);
  });

  it('says which cell is at fault where a value cannot be computed', () => {
    const { document, status } = run(
      'evaluate farm.csv --json',
      `${farm}share,,,wage / (wage - wage),,,,,,\nmore,,,share + 1,,,,,,\n`,
    );
    expect(document.cells['more']).toMatchObject({ value: null, error: { code: 'division-by-zero', cause: 'share' } });
    expect(document.cells['margin']?.value).toBe('54000');
    expect(status).toBe(1);
  });

  it('exits with 1 for a check that fails and a fault in the model, the document written all the same', () => {
    expect(run('evaluate farm.csv --set price=0.01 --json')).toMatchObject({ status: 1 });
    const faulty = run('evaluate farm.csv --json', `${farm}bad,,EUR,wgae * 2,,,,,,\n`);
    expect(faulty.status).toBe(1);
    expect(faulty.document.faults).toEqual([
      {
        code: 'name-unknown',
        message: 'name not known: wgae. Did you mean wage?',
        row: 11,
        column: 'formula',
        cell: 'bad',
        text: 'wgae',
      },
    ]);
    expect(faulty.document.cells['margin']?.value).toBe('54000');
    expect(faulty.messages).toContain('row 11, formula of bad: name not known: wgae');
  });

  it.each(['evaluate farm.csv', 'tornado farm.csv --result margin', 'budget farm.csv'])(
    '%s says which check does not hold, and where',
    (line) => {
      const { messages, status } = run(`${line} --against Today --set price=0.01`);
      expect(messages).toMatch(/^row \d+, role of pays: check does not hold in plan \w+: /m);
      expect(status).toBe(1);
    },
  );

  it('a check of a number is a fault, and neither holds nor fails', () => {
    const { document, messages, status } = run('evaluate farm.csv --json', 'name,formula,role\na,5,check\n');
    expect(document.checks).toEqual([{ name: 'a', holds: null }]);
    expect(messages).not.toContain('does not hold');
    expect(status).toBe(1);
  });

  it('prints an aligned table for people', () => {
    const lines = run('evaluate farm.csv').output.split('\n');
    expect(lines).toContain('margin    54000  EUR/year    Margin');
  });
});

describe('tornado', () => {
  it('lists every uncertain input the result depends on, largest swing first', () => {
    expect(run('tornado farm.csv --result margin --json').document).toEqual({
      result: 'margin',
      base: '54000',
      unit: 'EUR/year',
      bars: [
        { name: 'price', low: '0.4', high: '0.6', at_low: '42000', at_high: '66000', swing: '24000' },
        { name: 'seconds', low: '8', high: '20', at_low: '56000', at_high: '50000', swing: '6000' },
        { name: 'wage', low: '12', high: '20', at_low: '55200', at_high: '52000', swing: '3200' },
      ],
      faults: [],
    });
  });

  it('shows the bars, and says why, where there is no result today', () => {
    const model = 'name,formula,low,high\na,5,1,9\nk,2,1,3\nr,k / (a - 5),,\n';
    const { document, messages, status } = run('tornado farm.csv --result r --json', model);
    expect(document.base).toBeNull();
    expect(document.bars).toEqual([
      { name: 'a', low: '1', high: '9', at_low: '-0.5', at_high: '0.5', swing: '1' },
      { name: 'k', low: '1', high: '3', at_low: null, at_high: null, swing: null },
    ]);
    expect(messages).toBe('row 4, r: cannot be computed: division by 0 at today’s values in plan plan.\n');
    expect(status).toBe(1);
  });

  it('varies a shared input once in both plans of a difference', () => {
    const { document } = run('tornado farm.csv --result margin --against Today --json');
    expect(document.base).toBe('4000');
    expect(document.bars[0]).toMatchObject({ name: 'seconds', at_low: '6000', at_high: '0', swing: '6000' });
  });
});

describe('breakeven', () => {
  it('gives the crossing with its direction and the range looked at', () => {
    expect(run('breakeven farm.csv --result margin --input seconds --against Today --json').document).toEqual({
      input: 'seconds',
      unit: 's/plant',
      base: '12',
      from: '0',
      to: '132',
      crossings: [{ value: '20', direction: 'down' }],
      breaks: [],
      holds: null,
      faults: [],
    });
  });

  it('takes a target and a range, negative numbers too', () => {
    const { document } = run('breakeven farm.csv --result margin --input price --target -6000 --from -1 --to 1 --json');
    expect(document.crossings).toEqual([{ value: '0', direction: 'up' }]);
  });

  it('says where it holds when nothing is crossed', () => {
    expect(run('breakeven farm.csv --result margin --input wage --from 1 --to 5 --json').document.holds).toBe(
      'everywhere',
    );
    expect(run('breakeven farm.csv --result margin --input wage --target 1e6 --json').document.holds).toBe('nowhere');
  });
});

describe('switching', () => {
  it('puts the thinnest margin first and what cannot flip the result last', () => {
    const { document } = run('switching farm.csv --result margin --against Today --json');
    const [first] = document.inputs;
    expect(first).toMatchObject({ name: 'plants', base: '120000', all: [first?.switch] });
    expect(first?.switch).toMatch(/^111111\.11111111111111111111/);
    expect(first?.change_percent).toMatch(/^-7\.40740740740740740740/);
    expect(document.inputs.map(({ name }) => name)).toEqual(['plants', 'price', 'wage', 'seconds']);
  });
});

describe('grid', () => {
  it('gives the result at every pair, down by across', () => {
    const { document } = run('grid farm.csv --result margin --across price --down seconds --steps 2 --json');
    expect(document).toMatchObject({
      across: ['0.4', '0.6'],
      down: ['8', '20'],
      values: [
        ['44000', '68000'],
        ['38000', '62000'],
      ],
    });
  });
});

describe('budget', () => {
  it('lists what changes between two plans, each thing once', () => {
    expect(run('budget farm.csv --against Today --json').document).toEqual({
      added_returns: [{ name: 'sales', value: '10000' }],
      reduced_costs: [],
      added_costs: [{ name: 'hands', value: '6000' }],
      reduced_returns: [],
      net_change: '4000',
      unit: 'EUR/year',
      faults: [],
    });
  });
});

describe('wrong usage exits with 2 and says what would be right', () => {
  it.each([
    ['', 'command not known: none given'],
    ['guess farm.csv', 'command not known: guess'],
    ['evaluate', 'file missing'],
    ['evaluate other.csv', 'file not readable: other.csv'],
    ['evaluate farm.csv more.csv', 'too many words: more.csv'],
    ['evaluate farm.csv --frobnicate 3', 'option not known: --frobnicate. Leave it out.'],
    ['evaluate farm.csv --agianst Today', 'option not known: --agianst. Did you mean --against?'],
    ['evaluate farm.csv --plan', 'option without its value: --plan.'],
    ['evaluate farm.csv --json=no', 'option without a value: --json.'],
    ['evaluate farm.csv --result margin', 'option not for evaluate: --result'],
    ['evaluate farm.csv --plan Tomorrow', 'plan not known: Tomorrow. The model has Today, Nursery.'],
    ['evaluate farm.csv --set wage', '--set not readable: wage'],
    ['evaluate farm.csv --set wage=much', '--set not readable: wage=much'],
    ['evaluate farm.csv --set wgae=3', 'Did you mean wage?'],
    ['evaluate farm.csv --set margin=3', '--set of a cell that is no input in plan Nursery: margin'],
    ['tornado farm.csv', 'option missing: --result'],
    ['tornado farm.csv --result marign', 'Did you mean margin?'],
    ['tornado farm.csv --result pays', '--result is true or false: pays'],
    ['breakeven farm.csv --result margin', 'option missing: --input'],
    ['breakeven farm.csv --result margin --input sales', '--input is no input in plan Nursery: sales'],
    ['breakeven farm.csv --result margin --input wage --from 3', 'half a range'],
    ['breakeven farm.csv --result margin --input wage --from 3 --to 2', '--from not below --to: 3 and 2'],
    ['breakeven farm.csv --result margin --input wage --target x', '--target: not a number: x'],
    ['grid farm.csv --result margin --across wage --down wage', 'one input twice: wage'],
    ['grid farm.csv --result margin --across wage --down price --steps 1', '--steps not a whole number'],
    ['budget farm.csv', 'option missing: --against'],
  ])('%s', (line, message) => {
    const { status, messages, output } = run(line);
    expect({ status, output }).toEqual({ status: 2, output: '' });
    expect(messages).toContain(message);
  });
});

describe('wrong usage with --json is one document of faults as well:', () => {
  it.each([
    ['guess farm.csv --json', 'command not known: guess'],
    ['evaluate --json', 'file missing'],
    ['evaluate other.csv --json', 'file not readable: other.csv'],
    ['evaluate farm.csv --json --frobnicate 3', 'option not known: --frobnicate'],
    ['evaluate farm.csv --plan --json', 'option without its value: --plan'],
    ['evaluate farm.csv --set margin=3 --json', '--set of a cell that is no input in plan Nursery: margin'],
  ])('%s', (line, message) => {
    const { status, messages, document } = run(line);
    expect(status).toBe(2);
    expect(messages).toContain(message);
    expect(document).toEqual({
      faults: [
        { code: 'usage', message: expect.stringContaining(message) as string, row: 0, column: '', cell: '', text: '' },
      ],
    });
  });
});

describe('a file that cannot be used exits with 1', () => {
  it.each([
    ['nothing in it', '', 'empty-file'],
    ['other columns', 'a,b\n1,2\n', 'missing-column'],
  ])('%s', (_, file, code) => {
    const { status, document } = run('evaluate farm.csv --json', file);
    expect(status).toBe(1);
    expect(document.faults[0]?.code).toBe(code);
  });
});
