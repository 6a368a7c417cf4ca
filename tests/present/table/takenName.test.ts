import { expect, it } from 'vitest';
import { takenName } from '../../../src/present/table/takenName';

it.each<[title: string, caption: string, name: string]>([
  ['Does it pay? A made-up farm', 'Margin, EUR/year', 'Does it pay - Margin, EUR year.csv'],
  ['', 'Margin', 'Margin.csv'],
  ['', ' / ', 'table.csv'],
  ['a/b\\c:d', 'x\u202ey\u200bz', 'a b c d - x y z.csv'],
  ['..', 'Margin.', 'Margin.csv'],
])('“%s” and “%s” are %s', (title, caption, name) => expect(takenName(title, caption, 'csv')).toBe(name));

it.each(['word '.repeat(60), 'x'.repeat(300), 'سعر '.repeat(75), '板'.repeat(300), '🌱'.repeat(300)])(
  'a caption of 300 characters gives a name that file systems take: %s',
  (caption) => {
    const name = takenName(caption, caption, 'svg');
    expect(new TextEncoder().encode(name).length).toBeLessThanOrEqual(255);
    expect(name).toMatch(/\S \u002d \S.*\S\.svg$/);
  },
);
