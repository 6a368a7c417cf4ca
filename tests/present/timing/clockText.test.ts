import { describe, expect, it } from 'vitest';
import { createClockText } from '../../../src/present/timing/clockText';

const at = new Date(2031, 2, 9, 14, 3, 9).getTime();
const clock = createClockText('en-GB');

describe('a moment by the clock', () => {
  it('is told without its day on that day', () =>
    expect(clock(at, new Date(2031, 2, 9, 23, 59).getTime())).toBe('14:03:09'));

  it('is told with its day on another', () =>
    expect(clock(at, new Date(2031, 2, 10, 0, 1).getTime())).toMatch(/9 Mar 2031.* 14:03:09$/));
});
