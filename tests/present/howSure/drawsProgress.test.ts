import { expect, it } from 'vitest';
import { drawsDoing } from '../../../src/present/howSure/drawsProgress';
import { createFormat } from '../../../src/present/text/numberFormat';

const english = createFormat('en-GB');

it.each([
  ['draws', 'Making 100,000 draws'],
  ['drivers', 'Looking for what drives the spread'],
] as const)('in the phase of %s: %s', (phase, text) => expect(drawsDoing(phase, 100_000, english)).toBe(text));
