import { describe, expect, it } from 'vitest';
import { limitText, preparedLine } from '../../../src/present/theCase/ownWordsTexts';
import { format } from './budgets';

describe('who prepared it', () => {
  const line = (by: string, whom: string, date: string): string => {
    const texts = { by, for: whom, date };
    return preparedLine({ text: (part) => texts[part] });
  };

  it.each([
    ['nobody', '', ' ', '', ''],
    ['all', 'Ada', 'the board', '3 May', 'Prepared by Ada for the board, 3 May.'],
    ['by alone', 'Ada', '', '', 'Prepared by Ada.'],
    ['for alone', '', 'the board', '', 'Prepared for the board.'],
    ['a date alone', '', '', '3 May', '3 May.'],
  ])('%s', (_claim, by, whom, date, text) => expect(line(by, whom, date)).toBe(text));
});

describe('the limit of one’s own words', () => {
  it.each([
    ['tells the most before anything is written', 0, 'Printed below the finding. Up to 2,000 characters.'],
    ['counts what is written', 1031, '1,031 of 2,000 characters. Printed below the finding.'],
  ])('%s', (_claim, length, text) => expect(limitText(length, 2000, format)).toBe(text));
});
