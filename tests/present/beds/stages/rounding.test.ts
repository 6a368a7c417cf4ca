import { describe, expect, it } from 'vitest';
import { roundingLoss, type RoundingLoss } from '../../../../src/trade/roundingLoss';
import {
  lossRows,
  nextBatchSentence,
  roundingSentence,
  stagesSentence,
} from '../../../../src/present/beds/stages/rounding';
import { crop } from '../../../trade/crop';
import { english, names, read } from '../given';

function lossOf(text: string): RoundingLoss {
  const loss = roundingLoss(crop(text));
  if (loss === undefined) throw new Error(`no loss: ${text}`);
  return loss;
}

describe('what whole boards cost', () => {
  // 41 boards carry two batches of 20 boards: one board is free, which is 1 × 20 × 7 / 4 = 35 plants a week.
  it('is said in plants and as a share, and where', () => {
    const loss = lossOf('41 boards every 2 d: 4 d at 20');
    expect(read(roundingSentence(loss, names, english))).toBe(
      'Whole boards cost 35 plants a week, 2.4 % of balanced flow.',
    );
    expect(lossRows(loss, names, english).map(({ boards, plants }) => [boards.text, plants.text])).toEqual([
      ['0.0', '0.0'],
      ['0.0', '0.0'],
      ['1.0', '35.0'],
    ]);
    expect(stagesSentence(loss, names, english)).toEqual([]);
  });

  // The 401st plant of a batch needs a 21st board in each of two batches: 42, one more than there are.
  it('says what the next larger batch would need', () => {
    expect(read(nextBatchSentence(lossOf('41 boards every 2 d: 4 d at 20'), names, english))).toBe(
      'The next larger batch needs 1 board more: they would carry 420 plants a batch and finish 70 more a week.',
    );
  });

  it('says that it costs nothing where all turns are whole', () => {
    const text = read(roundingSentence(lossOf('40 boards every 2 d: 4 d at 20'), names, english));
    expect(text).toBe('Whole boards cost next to nothing here.');
  });

  // 5 d every 2 d: three batches at the most, 13 boards each, 2.5 on average: 6.5 of 39 boards wait.
  it('names the stages whose days are no multiple of the interval', () => {
    const loss = lossOf('39 boards every 2 d: 5 d at 20');
    expect(read(stagesSentence(loss, names, english))).toBe(
      'The days on nursery boards are no multiple of the interval, so boards wait between batches.',
    );
    expect(lossRows(loss, names, english)[0]?.boards.text).toBe('6.5');
  });

  // Stage 2 holds 20 plants on 3 boards of 7, so 1 place stays empty.
  it('counts the places that a batch leaves empty, by stage', () => {
    const loss = lossOf('5 boards every 2 d: 2 d at 10; 2 d at 7');
    expect(read(stagesSentence(loss, names, english))).toContain('A batch leaves 1 place empty on finishing boards.');
    expect(lossRows(loss, names, english).map(({ label }) => label)).toContain('of these on finishing boards');
  });
});
