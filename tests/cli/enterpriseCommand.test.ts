import { describe, expect, it } from 'vitest';
import { runCommand } from '../../src/cli/run';
import { machineWith } from './machine';

const farm = `name,label,unit,formula,budget,plan: Today,plan: Nursery
heads,Heads,head/year,1000,,,2000
price,Price,EUR/head,2,,,
picking,Picking,EUR/head,0.6,,,
sales,Sales,EUR/year,heads * price,return,,
harvest,Harvest,EUR/year,heads * picking,cost,,
rent,Rent,EUR/month,75,cost,,
zero,Zero,,0,,,
`;

interface Document {
  readonly variable_costs: readonly Readonly<Record<string, unknown>>[];
  readonly fixed_costs: readonly Readonly<Record<string, unknown>>[];
  readonly yields: readonly Readonly<Record<string, unknown>>[];
  readonly [name: string]: unknown;
}

function run(words = '', file = farm) {
  const bytes = new TextEncoder().encode(file);
  const found = runCommand(
    ['enterprise', 'm.csv', ...words.split(' ').filter(Boolean)],
    machineWith(() => bytes),
  );
  return { ...found, document: (found.output.startsWith('{') ? JSON.parse(found.output) : {}) as Document };
}

describe('enterprise --json', () => {
  it('has its parts in order, of the last plan unless another is named', () => {
    const { status, messages, document } = run('--plan Today --json');
    expect([status, messages]).toEqual([0, '']);
    expect(document).toEqual({
      plan: 'Today',
      unit: 'EUR/year',
      returns: [{ name: 'sales', value: '2000', each: '2', by_hand: false }],
      other_returns: [],
      variable_costs: [{ name: 'harvest', value: '600', each: '0.6', by_hand: false }],
      fixed_costs: [{ name: 'rent', value: '900', each: '0.9', by_hand: false }],
      total_returns: '2000',
      total_variable_costs: '600',
      total_fixed_costs: '900',
      margin_over_variable_costs: '1400',
      margin: '500',
      plants: '1000',
      unit_each: 'EUR/head',
      price: '2',
      variable_cost_each: '0.6',
      breakeven_price: '1.5',
      breakeven_plants: '642.8571428571428571428571428571429',
      yields: [
        { share: '0.8', plants: '800', breakeven_price: '1.725' },
        { share: '1', plants: '1000', breakeven_price: '1.5' },
        { share: '1.2', plants: '1200', breakeven_price: '1.35' },
      ],
      faults: [],
    });
    expect(run('--json').document['margin']).toBe('1900');
  });

  it('counts lines as a person says, and the breakeven follows', () => {
    const { document } = run('--plan Today --variable rent --fixed harvest --json');
    expect(document.variable_costs).toEqual([{ name: 'rent', value: '900', each: '0.9', by_hand: true }]);
    expect(document.fixed_costs).toMatchObject([{ name: 'harvest', by_hand: true }]);
    expect(document['margin']).toBe('500');
    // 600 ÷ (2 − 0.9), and 600 ÷ 800 + 0.9 at a fifth fewer.
    expect(document['breakeven_plants']).toMatch(/^545\.45/);
    expect(document.yields[0]).toMatchObject({ breakeven_price: '1.65' });
    expect(run('--plan Today --fixed rent --json').document.fixed_costs).toMatchObject([{ by_hand: false }]);
  });

  it('says nothing of a plant where none is counted or none is sold', () => {
    const none = run('--plan Today --json', farm.replace('head/year,1000', 'head/year,0')).document;
    expect([none['plants'], none['breakeven_price'], none['breakeven_plants'], none.yields]).toEqual([
      null,
      null,
      null,
      [],
    ]);
    expect(none['margin']).toBe('-900');
  });

  it('cannot be computed where a line cannot: null and exit status 1', () => {
    const { status, document } = run(
      '--json',
      farm.replace('EUR/month,75', 'EUR/month,75 * picking / (picking * zero)'),
    );
    expect(status).toBe(1);
    expect(document['margin']).toBeNull();
  });
});

describe('enterprise for people', () => {
  it('lists lines in the order of the trade, and what has to be reached', () => {
    const { output } = run('--plan Today --fixed harvest');
    expect(output).toMatch(/^ +EUR\/year +EUR\/head$/m);
    expect(output).toMatch(/^ {2}Harvest +600 +0\.6 +counted so by hand$/m);
    expect(output).toMatch(/^price that covers all costs +1\.5 {2}EUR\/head$/m);
    expect(output).toMatch(/^ +1200 +120 % +1\.25$/m);
  });
});

describe('wrong usage exits with 2 and says what would be right', () => {
  it.each([
    ['--fixed harvset', 'no line of the budget in --fixed: harvset. Did you mean harvest?'],
    ['--variable price', 'no line of the budget in --variable: price. The budget has sales, harvest, rent.'],
    ['--variable rent --fixed rent', 'variable and fixed at once: rent.'],
    ['--against Today', 'option not for enterprise: --against.'],
  ])('%s', (words, message) => {
    const { status, messages } = run(words);
    expect(status).toBe(2);
    expect(messages).toContain(message);
  });

  it('a model without lines of the budget', () => {
    expect(run('', farm.replaceAll(/return|cost/g, '')).messages).toContain('no yearly budget:');
  });
});
