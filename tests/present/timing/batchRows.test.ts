import { describe, expect, it } from 'vitest';
import { batchRows } from '../../../src/present/timing/batchRows';
import { english, only } from './trials';

const rows = (text: string): string[] =>
  batchRows(only(text), english).map((row) =>
    [row.step, row.number, row.plants.text, row.seconds.text, row.off.text].join(' | '),
  );

describe('the batches behind the picture', () => {
  // 110 s for 10 plants and 130 s for 10: 11 and 13 s each, 1 s off a mean of 12, which is 8.3 %.
  it('tell how far each lies off the mean', () =>
    expect(rows('10 110; 10 130')).toEqual(['moving | 1 | 10 | 11.00 | −8.3 %', 'moving | 2 | 10 | 13.00 | +8.3 %']));

  it('keep their numbers beside one that is not counted', () =>
    expect(rows('10 110; some 120; 10 130').map((row) => row.slice(0, 10))).toEqual(['moving | 1', 'moving | 3']));

  it('are none where none is counted', () => expect(rows('some 110')).toEqual([]));
});
