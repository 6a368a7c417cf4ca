import { expect, it } from 'vitest';
import { decimal } from '../../../../src/core/number';
import { outlayRange } from '../../../../src/present/theCase/years/outlayRange';
import { format } from '../budgets';

const given = (low: number | undefined, high: number | undefined, outlay = 100): unknown => {
  const ends = [low, high].map((end) => (end === undefined ? undefined : decimal(end)));
  const range = outlayRange({ low: ends[0], high: ends[1] }, decimal(outlay), format);
  if (range === undefined || 'fault' in range) return range?.fault;
  return [range.low.toString(), range.high.toString()];
};

it('is none until a person gives one', () => expect(given(undefined, undefined)).toBeUndefined());
it('is both ends round the outlay, which may be one of them', () => {
  expect(given(80, 150)).toEqual(['80', '150']);
  expect(given(100, 150)).toEqual(['100', '150']);
});

it.each([
  ['half a range', 80, undefined, 'half a range of the outlay: give both, at least and at most.'],
  ['ends the wrong way round', 150, 80, 'at least is not below at most: 150 and 80. Swap them;'],
  ['no width', 100, 100, 'at least is not below at most: 100 and 100.'],
  ['an outlay outside', 110, 150, 'outlay outside its range from 110 to 150: 100. Widen the range;'],
])('%s is said, with what would mend it', (_what, low, high, message) => {
  expect(given(low, high)).toContain(message);
});
