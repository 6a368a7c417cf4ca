import { describe, expect, test } from 'vitest';
import { listTexts } from '../../../src/present/numbers/listTexts';
import { textOf } from '../../../src/present/text/phrase';

test.each([
  [1, 'one entry'],
  [0, '0 entries'],
  [12, '12 entries'],
])('a group of %d holds %s', (count, said) => expect(listTexts.entries(count)).toBe(said));

describe('where the sieve lets nothing through', () => {
  test.each([
    [false, 'No entry has kelp in its label or name.'],
    [true, 'No entry has kelp in its label or name among the inputs.'],
  ])('and lets only inputs through: %s', (onlyInputs, said) =>
    expect(textOf(listTexts.noneFound({ words: 'kelp', onlyInputs }))).toBe(said),
  );

  test('the words looked for stand out', () =>
    expect(listTexts.noneFound({ words: 'kelp', onlyInputs: true }).filter(({ strong }) => strong)).toEqual([
      { text: 'kelp', strong: true },
    ]));
});
