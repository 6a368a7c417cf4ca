import { describe, expect, it } from 'vitest';
import { decimal } from '../../../src/core/number';
import { shownRange } from '../../../src/present/breakeven/range';

const usual = { from: decimal(0), to: decimal(50) };
const end = (text: string) => (text === '' ? undefined : decimal(text));
const look = (from: string, to: string): string => {
  const { range, own, problem } = shownRange(usual, end(from), end(to), (value) => value.toString());
  return `${range.from.toString()} to ${range.to.toString()}${own ? ', own' : ''}${problem === undefined ? '' : `: ${problem}`}`;
};

describe('the range that is looked at', () => {
  it.each([
    ['is the usual one', '', '', '0 to 50'],
    ['has an own end', '', '20', '0 to 20, own'],
    ['has both ends of its own', '-5', '7.5', '-5 to 7.5, own'],
    [
      'stays the usual one where the ends are the wrong way round',
      '60',
      '5',
      '0 to 50, own: range without width: from 60 to 5. Enter a “from” below the “to”.',
    ],
    [
      'and where they are the same',
      '5',
      '5',
      '0 to 50, own: range without width: from 5 to 5. Enter a “from” below the “to”.',
    ],
    [
      'and where an own end passes the usual other one',
      '60',
      '',
      '0 to 50, own: range without width: from 60 to 50. Enter a “from” below the “to”.',
    ],
  ])('%s', (_claim, from, to, said) => expect(look(from, to)).toBe(said));
});
