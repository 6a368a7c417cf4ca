import { describe, expect, it } from 'vitest';
import { decimal, type Decimal } from '../../../src/core/number';
import { remarkOn, shownRange } from '../../../src/present/breakeven/range';
import { defaultRange } from '../../../src/study/searchRange';
import { leverOf } from '../../study/leverOf';

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

describe('of the range it is said', () => {
  const write = (value: Decimal): string => value.toString();
  const remark = (base: string, low: string, from = '', to = ''): string | undefined => {
    const lever = leverOf(decimal(base), ...(low === '' ? [] : ([decimal(low), decimal(9)] as const)));
    return remarkOn(lever, shownRange(defaultRange(lever), end(from), end(to), write), write);
  };
  it.each([
    ['nothing of the usual one', '5', '1', '', '', undefined],
    ['nor without a range', '5', '', '', '', undefined],
    [
      'that it is a guess at 0 without a range',
      '0',
      '',
      '',
      '',
      'This range is a guess: today’s 0 has no range of its own. Enter the ends that you mean.',
    ],
    ['nothing more once its ends are set', '0', '', '-3', '5', undefined],
    ['nor at 0 with a range', '0', '0', '', '', undefined],
    [
      'that today’s number lies outside of the ends that were set',
      '5',
      '1',
      '6',
      '8',
      'Today’s 5 lies outside: the picture reaches to it, the answer does not.',
    ],
  ])('%s', (_claim, base, low, from, to, said) => expect(remark(base, low, from, to)).toBe(said));
});
