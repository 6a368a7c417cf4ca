import { describe, expect, it } from 'vitest';
import { byWeeksSentence, splitRows } from '../../../../src/present/beds/stages/byWeeks';
import { english, lookOn, names, read } from '../given';

// 90 boards: by weeks 30 and 60. Seems (30 × 72 + 60 × 18) / 3 = 1,080; stage 2 passes 60 × 18 / 2 = 540;
// keeping pace 10 × 72 = 80 × 18 / 2 = 720; one stage 90 × 18 / 3 = 540.
const lesson = '90 boards every 7 d: 7 d at 72; 14 d at 18';

describe('sharing boards by weeks', () => {
  it('is told with what it seems to give, what it gives, and what keeping pace gives', () => {
    expect(read(byWeeksSentence(lookOn(lesson).byWeeks!, names, english))).toBe(
      'Shared by the weeks spent in each stage, the boards seem to finish 1,080 plants a week. ' +
        'But the finishing boards let only 540 through. Shared so that the stages keep pace, they finish 720. ' +
        'Against one stage the shortcut claims +100 % where +33.3 % is to be had: 3 times as much.',
    );
  });

  it('stands side by side as a table', () => {
    const rows = splitRows(lookOn(lesson).byWeeks!, english);
    expect(
      rows.map(({ finished, gain, boards }) => [
        finished.text,
        gain.text.replace('\u00a0', ' '),
        boards.map(({ text }) => text).join('+'),
      ]),
    ).toEqual([
      ['540', '', '–+–'],
      ['1,080', '+100 %', '30.0+60.0'],
      ['540', '0 %', '30.0+60.0'],
      ['720', '+33.3 %', '10.0+80.0'],
    ]);
  });

  it('overstates nothing where both stages stand at one density', () => {
    const text = read(byWeeksSentence(lookOn('90 boards every 7 d: 7 d at 18; 14 d at 18').byWeeks!, names, english));
    expect(text).toContain('Moving gains nothing here, however the places are shared.');
  });

  it.each([
    ['one stage has nothing to share with', '90 boards every 7 d: 7 d at 18'],
    ['a skipped stage has neither', '90 boards every 7 d: 0 d at 72; 14 d at 18'],
    ['an unknown density gives no split', '90 boards every 7 d: 7 d at 0; 14 d at 18'],
  ])('%s', (_claim, text) => {
    expect(lookOn(text).byWeeks).toBeUndefined();
  });
});
