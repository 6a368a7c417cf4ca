import { describe, expect, it } from 'vitest';
import { decimal } from '../../../src/core/number';
import { allowanceOptions } from '../../../src/present/timing/allowanceOptions';
import { english, read } from './trials';

const labels = (allowance: number): string[] =>
  allowanceOptions(decimal(allowance), english).map(({ label }) => read(label));

describe('what an allowance is a share of', () => {
  // 15 minutes on top of 100 are 1.15 times as long; 15 out of each 100 leave 0.85 of them to work.
  it('is offered with what it does to a time', () =>
    expect(labels(15)).toEqual(['the job (× 1.15)', 'the day (÷ 0.85)']));

  it('takes all of a day from 100 per cent on', () => {
    expect(labels(100)[1]).toBe('the day (all of it)');
    expect(labels(120)[1]).toBe('the day (all of it)');
  });
});
