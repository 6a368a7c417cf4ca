import { expect, it } from 'vitest';
import { limitsIn } from '../../src/model/limits';
import { sheetOf } from './table';

it('an entry is a limit that 0 lifts where formulas say so', () => {
  const sheet = sheetOf(`
bench: 1
needed: 2
sold: 3
market: 0
bought: 0 | in P: 1
mode: 0
bench_enough: bench == 0 or needed / 2 <= bench
full: market == 0 ? sold : min(sold, market)
bought_enough: bought == 0 or bought >= needed
chosen: mode == 0 ? sold : needed`);
  expect([...limitsIn(sheet)]).toEqual(['bench', 'market']);
});
