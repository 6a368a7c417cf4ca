import { expect, it } from 'vitest';
import { backText } from '../../../src/present/method/backText';

it.each([
  ['the question that was in sight', 'how sure', 'Back to How sure'],
  ['the numbers where nothing is kept', '', 'Back to Numbers'],
  ['the numbers where what is kept is no question', 'beds of old', 'Back to Numbers'],
])('leads back to %s', (_where, from, text) => expect(backText(from)).toBe(text));
