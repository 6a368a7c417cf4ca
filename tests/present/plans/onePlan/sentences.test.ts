import { expect, it } from 'vitest';
import { onePlanFinding, yieldTable } from '../../../../src/present/plans/onePlan/sentences';
import { textOf } from '../../../../src/present/text/phrase';
import { format } from '../../theCase/budgets';
import { heads, oneIn } from './sold';

const plain = (text: string): string => text.replaceAll('\u00a0', ' ');
const said = (text: string): string => plain(textOf(onePlanFinding(oneIn(text)!, 'Today', format)));

it('says what is left, the price that is needed and the plants that are enough', () => {
  expect(said(heads)).toBe(
    'Today leaves 1,400 EUR a year over its variable costs and 500.00 EUR a year over all costs. ' +
      'At 1,000 heads a year the price must be at least 1.50 EUR per head; at today’s price of 2.00 EUR per head, ' +
      '643 heads are enough.',
  );
});

it.each([
  ['more plants than there are', '900 |', '1500 |', '1,072 heads would be enough.'],
  ['no number of plants', '0.6', '2.5', 'no number of plants is enough, as each costs 2.50 EUR per head by itself.'],
  ['any number of plants', '900 |', '0 |', 'any number of plants is enough.'],
])('says that it needs %s', (_what, from, to, end) => expect(said(heads.replace(from, to)).endsWith(end)).toBe(true));

it('says what is lacking', () => {
  expect(said(heads.replace('900 |', '1500 |'))).toContain(
    'leaves 1,400 EUR a year over its variable costs, and lacks 100.00 EUR a year over all costs.',
  );
});

it('says that other returns pay for all', () => {
  expect(said(heads.replace('grant [EUR/year]: 0', 'grant [EUR/year]: 5000'))).toContain(
    'At 1,000 heads a year other returns pay all costs;',
  );
});

it('says that a line has no value, and that plants are not counted', () => {
  expect(said(`none: 0\n x [EUR/year]: 5\n rent [EUR/year]: x / none | budget: cost`)).toBe(
    'A line has no value in this plan today, so nothing can be added up.',
  );
  expect(said('rent [EUR/year]: 5 | budget: cost')).toContain('No entry counts plants a year');
});

it('has prices for a fifth less and a fifth more', () => {
  expect(yieldTable(oneIn(heads)!, format).rows.map((row) => plain(row.map(({ text }) => text).join(' | ')))).toEqual([
    '800 | −20 % | 1.73 EUR per head',
    '1,000 | today | 1.50 EUR per head',
    '1,200 | +20 % | 1.35 EUR per head',
  ]);
  expect(yieldTable(oneIn('rent [EUR/year]: 5 | budget: cost')!, format).rows).toEqual([]);
});

it.each(['0', '1e300'])('has a word for what cannot be said of %s plants', (plants) => {
  const one = oneIn(heads.replace(/(?<=heads \[[^\]]*\]: )\d+/, plants))!;
  expect(textOf(onePlanFinding(one, 'Today', format))).not.toMatch(/NaN|Infinity/);
  for (const row of yieldTable(one, format).rows) {
    for (const { text } of row) expect(text).not.toMatch(/NaN|Infinity/);
  }
});
