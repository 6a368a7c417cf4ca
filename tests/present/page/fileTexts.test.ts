import { describe, expect, test } from 'vitest';
import { fileTexts, progressText } from '../../../src/present/page/fileTexts';

describe('what is saved or linked says how many texts stay out of it', () => {
  test.each([
    [fileTexts.saved('farm.csv', 0), 'Saved as farm.csv.'],
    [fileTexts.saved('farm.csv', 1), 'Saved as farm.csv; one text that is not valid yet stays out of it.'],
    [fileTexts.saved('farm.csv', 2), 'Saved as farm.csv; 2 texts that are not valid yet stay out of it.'],
    [
      fileTexts.linkCopied(0),
      'A link is copied. It holds the whole model as it is now. Give it to those who may see your numbers.',
    ],
    [
      fileTexts.linkInAddress(1),
      'The link stands in this page’s address: copy it there. It holds the whole model as it is now; one text that ' +
        'is not valid yet stays out of it. Give it to those who may see your numbers.',
    ],
  ])('%s', (said, expected) => expect(said).toBe(expected));
});

describe('what would take the place of changed numbers is named by its kind', () => {
  test.each([
    [fileTexts.fileReplaces('new.csv', 'mine.csv'), 'new.csv takes the place of mine.csv, '],
    [
      fileTexts.modelReplaces('What may a plug cost?', 'mine.csv'),
      '“What may a plug cost?” takes the place of mine.csv, ',
    ],
    [fileTexts.linkReplaces('new.csv', 'mine.csv'), 'new.csv, which the link holds, takes the place of mine.csv, '],
  ])('%s', (said, start) =>
    expect(said).toBe(`${start}in which you have changed something: save that as a file first if you need it.`),
  );
});

test.each([
  [0, 'Reading farm.csv'],
  [0.99, 'Reading farm.csv'],
  [1, 'Checking farm.csv'],
])('with a share of %d read: %s', (share, said) => expect(progressText({ name: 'farm.csv', share })).toBe(said));
