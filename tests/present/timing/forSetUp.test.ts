import { expect, test } from 'vitest';
import { readTrialsText } from '../../../src/files/readTrials';
import { timedAnswers } from '../../../src/present/timing/forSetUp';
import { studyOf } from '../../../src/present/timing/study';
import { createFormat } from '../../../src/present/text/numberFormat';
import { timing, english } from './trials';

const trials = readTrialsText(
  ['step,plants,seconds', 'washing,4,30', 'transplanting,10,110', 'transplanting,10,130.5', 'resting,,', ''].join('\n'),
);
const day = new Date(2031, 2, 9);

test('each timed step answers with its mean, the one that moves plants first, and says where it comes from', () => {
  const answers = timedAnswers(studyOf(trials, timing()), day, english);
  expect(answers.map(({ label }) => label.replace(/\s/g, ' '))).toEqual([
    'Use 12.03 s: transplanting, 2 batches',
    'Use 7.5 s: washing, 1 batch',
  ]);
  expect(answers[0]).toMatchObject({ text: '12.03', source: 'timed: 2 batches, 9 March 2031' });
});

test('the seconds are written as the reader’s language does, so that the field reads them', () => {
  const [first] = timedAnswers(studyOf(trials, timing()), day, createFormat('de-AT'));
  expect(first?.text).toBe('12,03');
});
