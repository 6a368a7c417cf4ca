import { readFileSync } from 'node:fs';
import { describe, expect, it } from 'vitest';
import { readModelText } from '../../../src/files/readModel';
import { lessonOf } from '../../../src/present/lesson/steps';
import { modelOf } from '../../model/table';

const small = modelOf(`
  - What is a tray worth? | note: A made-up lesson.
  - Before you begin | note: Hand out the sheet.
  - Step 1. How many trays? | note: Seven.
  trays [tray]: 7
  - 2) And by hand? | note: Eight.
  - Step 3. No answer yet
  - Stage 2 of the house | note: Not a step.
`);

describe('a lesson', () => {
  it('is a model’s text rows with a number and a note', () => {
    expect(lessonOf(small)).toEqual({
      title: 'What is a tray worth?',
      about: 'A made-up lesson.',
      steps: [
        { row: 4, question: 'Step 1. How many trays?', answer: 'Seven.' },
        { row: 6, question: '2) And by hand?', answer: 'Eight.' },
      ],
      asides: [
        { row: 3, question: 'Before you begin', answer: 'Hand out the sheet.' },
        { row: 8, question: 'Stage 2 of the house', answer: 'Not a step.' },
      ],
    });
  });

  it.each([
    ['without numbered rows', '- A title | note: About\n- How to read it | note: Slowly\na: 1'],
    ['without notes', '- A title | note: About\n- Step 1. What?\na: 1'],
    ['without text', 'a: 1'],
  ])('is no model %s', (_claim, text) => {
    expect(lessonOf(modelOf(text))).toBeUndefined();
  });

  it.each([
    ['density-lesson', 11],
    ['transplant-hire', undefined],
    ['plug-media', undefined],
    ['three-stage', undefined],
    ['channel-or-bench', undefined],
  ])('%s has %s steps', (file, count) => {
    const { model } = readModelText(readFileSync(`models/${file}.csv`, 'utf8'));
    expect(lessonOf(model)?.steps.length).toBe(count);
  });
});
