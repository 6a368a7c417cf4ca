import { expect, it } from 'vitest';
import { takenOutText } from '../../../src/present/timing/batchesTexts';

it.each([
  ['by its plants', '60', 'The batch of 60 plants was taken out.'],
  ['without them where they are blank', '', 'A batch was taken out.'],
])('a batch that was taken out is named %s', (_how, plants, text) => expect(takenOutText(plants)).toBe(text));
