import { describe, expect, it } from 'vitest';
import { readTrialsText } from '../../../src/files/readTrials';
import { writeTrials } from '../../../src/files/writeTrials';
import { withBatch, withoutBatch, withText } from '../../../src/present/timing/sheetEdits';

const text = 'step,plants,seconds\nmoving,60,700\nmoving,50,600\n';
const { sheet } = readTrialsText(text);

describe('an edit of trials', () => {
  it('changes one text, with its column where the file has none', () => {
    expect(writeTrials(text, withText(sheet, 3, 'worker', 'A'))).toBe(
      'step,plants,seconds,worker\nmoving,60,700,\nmoving,50,600,A\n',
    );
  });

  it('changes nothing where the batch is gone', () => expect(withText(sheet, 9, 'plants', '5')).toBe(sheet));

  it('adds a batch, with no column for what is blank', () => {
    expect(writeTrials(text, withBatch(sheet, { step: 'moving', plants: '5', seconds: '61.5', note: '' }))).toBe(
      `${text}moving,5,61.5\n`,
    );
  });

  it('begins a file', () => {
    const { sheet: empty } = readTrialsText('');
    expect(writeTrials('', withBatch(empty, { step: 'moving', date: '2031-03-09' }))).toBe(
      'step,plants,seconds,worker,rating,date,lost,note,way\nmoving,,,,,2031-03-09,,,\n',
    );
  });

  it('takes a batch out', () =>
    expect(writeTrials(text, withoutBatch(sheet, 2))).toBe('step,plants,seconds\nmoving,50,600\n'));
});
