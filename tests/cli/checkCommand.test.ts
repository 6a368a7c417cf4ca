import { describe, expect, it } from 'vitest';
import { runCommand } from '../../src/cli/run';
import { machineWith } from './machine';

const farm = `name,label,unit,formula,role,plan: Today,plan: Nursery
,An invented farm,,,,,
price,Price,EUR/head,0.8,,,
cost,Cost,EUR/head,0.5,,,0.9
pays,The heads cost more than they bring,,price > cost,check,,
`;

interface Document {
  readonly entries: number;
  readonly faults: readonly { code: string }[];
  readonly checks: readonly unknown[];
}

function check(file: string, words = '--json') {
  const found = runCommand(
    ['check', 'farm.csv', ...words.split(' ').filter(Boolean)],
    machineWith(() => new TextEncoder().encode(file)),
  );
  return { ...found, document: (found.output.startsWith('{') ? JSON.parse(found.output) : {}) as Document };
}

describe('check --json', () => {
  it('gives entries, plans, faults, checks and units; a check that fails in one plan is exit status 1', () => {
    const { document, status, messages } = check(farm);
    expect(document).toEqual({
      entries: 3,
      plans: ['Today', 'Nursery'],
      faults: [],
      checks: [
        { plan: 'Today', name: 'pays', holds: true },
        { plan: 'Nursery', name: 'pays', holds: false },
      ],
      units: [
        { name: 'price', unit: 'EUR/head' },
        { name: 'cost', unit: 'EUR/head' },
        { name: 'pays', unit: '' },
      ],
    });
    expect(status).toBe(1);
    expect(messages).toContain('check does not hold in plan Nursery: The heads cost more than they bring\n');
    expect(messages).not.toContain('plan Today');
  });

  it('exits with 0 where every check holds in every plan', () => {
    expect(check(farm.replace('0.9', '0.6'))).toMatchObject({ status: 0, messages: '' });
  });

  it.each<[claim: string, file: string, code: string, holds: unknown]>([
    ['a fault', `${farm}bad,,EUR,wgae * 2,,,\n`, 'name-unknown', [true, false]],
    ['a check that has a fault', farm.replace('price > cost', 'price > csot'), 'name-unknown', [null, null]],
    ['a check of a number', farm.replace('price > cost', '5'), 'check-number', [null, null]],
  ])('%s is exit status 1', (_claim, file, code, holds) => {
    const { document, status } = check(file);
    expect(status).toBe(1);
    expect(document.faults.map((fault) => fault.code)).toContain(code);
    expect(document.checks).toMatchObject((holds as unknown[]).map((each) => ({ holds: each })));
  });

  it('a check that cannot be computed neither holds nor fails, and is exit status 1', () => {
    const { document, status } = check(farm.replace('price > cost', 'price / (cost - cost) > 1'));
    expect(document).toMatchObject({ faults: [], checks: [{ holds: null }, { holds: null }] });
    expect(status).toBe(1);
  });

  it('a value that cannot be computed elsewhere is none of its matters', () => {
    expect(check(`${farm.replace('0.9', '0.6')}odd,,,price / (cost - cost),,,\n`).status).toBe(0);
  });

  it('a file that is no model has no plans', () => {
    const { document, status } = check('a,b\n1,2\n');
    expect(status).toBe(1);
    expect(document).toMatchObject({ entries: 0, plans: [], checks: [], units: [] });
    expect(document.faults.map(({ code }) => code)).toEqual(['missing-column']);
  });
});

describe('check for people', () => {
  it('counts, then holds the plans side by side, then lists the units', () => {
    expect(check(farm, '').output).toBe(
      '3 entries, 2 plans, 0 faults\n\n' +
        'check  Today  Nursery\npays   holds  does not hold\n\n' +
        'entry  unit\nprice  EUR/head\ncost   EUR/head\npays\n',
    );
  });

  it('says a single one as such, and leaves out what is not there', () => {
    expect(check('name,formula\na,b\n', '').output).toBe('1 entry, 1 plan, 1 fault\n\nentry  unit\na\n');
  });

  it.each(['--plan Today', '--set price=1', '--result price'])('takes no %s: it looks at all of the file', (words) =>
    expect(check(farm, words).status).toBe(2),
  );
});
