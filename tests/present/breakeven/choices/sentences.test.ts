import { describe, expect, it } from 'vitest';
import { choiceRows, type ChoiceRow } from '../../../../src/present/breakeven/choices/rows';
import { choiceSentences, leadingOf } from '../../../../src/present/breakeven/choices/sentences';
import { choiceTable } from '../../../../src/present/breakeven/choices/table';
import { createFormat } from '../../../../src/present/text/numberFormat';
import { textOf } from '../../../../src/present/text/phrase';
import { ask, type Case } from '../given';

const english = createFormat('en-GB');

function rowsOf(text: string, given: Case): { matter: ReturnType<typeof ask>['matter']; rows: readonly ChoiceRow[] } {
  const { matter } = ask(text, given);
  const { lever, plan, against } = matter.lines;
  const all = [...choiceRows(lever, against === undefined ? [plan] : [plan, against])];
  return { matter, rows: all.at(-1)! };
}

function say(text: string, given: Case = {}): { main: string; more: string } {
  const { matter, rows } = rowsOf(text, given);
  const { main, more } = choiceSentences({ ...matter, rows }, english);
  return { main: textOf(main).replaceAll('\u00a0', ' '), more: textOf(more).replaceAll('\u00a0', ' ') };
}

// Of 1,000 plugs the hire sells 200 more; a plug costs 0.05 or 0.4 EUR, a head brings 0.3 EUR.
const plugs = (formula = 'heads * (0.3 * one - (x == 2 ? 0.4 * one : 0.05 * one))'): string => `
  x: 1 | choices: 1 one-use plug; 2 reusable plug | label: Plug in use
  one [EUR/head]: 1
  heads [head]: 1000 | in Today: 1000 | in With a hire: 1200
  r [EUR]: ${formula} | label: Margin
`;
const same = plugs('heads * (0.3 * one - (x == 2 ? 0.2 * one : 0.05 * one))');

describe('of an input with named choices it says with which', () => {
  it('one plan pays, and with which not', () => {
    const { main, more } = say(plugs());
    expect(main).toBe('With a hire pays with one-use plug, not with reusable plug.');
    expect(more).toBe(
      'Today, with one-use plug, the difference in Margin is 50.00 EUR. ' +
        'Margin in Today is 0 or more with one-use plug, not with reusable plug. ' +
        'Margin in With a hire is 0 or more with one-use plug, not with reusable plug.',
    );
  });
  it('all of them', () => {
    expect(say(same).main).toBe('With a hire pays with one-use plug and with reusable plug.');
  });
  it('none', () => {
    expect(say(same, { view: 'difference', target: '60' }).main).toBe(
      'Whatever Plug in use is, the difference in Margin is less than 60.00 EUR.',
    );
  });
  it('it reaches another target', () => {
    expect(say(same, { view: 'difference', target: '30' }).main).toBe(
      'The difference in Margin is at least 30.00 EUR with one-use plug, not with reusable plug.',
    );
  });
  it('a plan alone does', () => {
    const alone = 'x: 1 | choices: 1 one; 2 two; 3 three | label: Way\nr: 2.5 - x | label: Left over';
    expect(say(alone).main).toBe('Left over is 0 or more with one and with two, not with three.');
  });
  it('it cannot be computed', () => {
    const alone = 'x: 1 | choices: 1 one; 2 two; 3 three | label: Way\nr: 1 / (2 - x) | label: Left over';
    const { main, more } = say(alone);
    expect(main).toBe('Left over is 0 or more with one, not with three.');
    expect(more).toBe('Today, with one, Left over is 1. It cannot be computed with two.');
  });
  it('nothing changes', () => {
    expect(say(plugs('heads * 0.3 * one')).main).toBe('Plug in use does not touch the difference in Margin.');
  });
});

describe('the table of choices', () => {
  it('has a row for each, with today’s marked and the difference signed', () => {
    const { matter, rows } = rowsOf(plugs(), {});
    const columns = [
      { name: 'A', of: ({ values }: ChoiceRow) => values[1]! },
      { name: 'B', of: ({ values }: ChoiceRow) => values[0]! },
      { name: 'B − A', of: leadingOf, isDifference: true },
    ];
    const table = choiceTable(rows, matter.moved.cell, matter.subject.result, columns, english);
    expect(table.columns.map(({ name }) => name)).toEqual(['Plug in use', 'A', 'B', 'B − A']);
    expect(table.rows.map((row) => row.map(({ text, note = '' }) => [text, note].filter(Boolean).join(' ')))).toEqual([
      ['one-use plug today', '250.00', '300.00', '+50.00'],
      ['reusable plug', '\u2212100.00', '\u2212120.00', '\u221220.00'],
    ]);
  });
});
