import { readFileSync } from 'node:fs';
import { decimal } from '../../../src/core/number';
import { readTrialsText } from '../../../src/files/readTrials';
import { halfWidths } from '../../../src/study/studentT';
import { createFormat } from '../../../src/present/text/numberFormat';
import { studyOf, type StepFound } from '../../../src/present/timing/study';
import type { TimingTerms } from '../../../src/present/timing/terms';

export const english = createFormat('en-GB');
export const shipped = readFileSync('models/trials/transplant-trials.csv', 'utf8');

/** The usual terms, with others in their place. */
export function timing(others: Partial<TimingTerms['terms']> = {}): TimingTerms {
  const terms = {
    allowance: decimal(15),
    allowanceOf: 'job' as const,
    within: decimal(5),
    halfWidths: halfWidths(0.05),
    ...others,
  };
  return { terms, confidence: decimal(95), hasStandardTime: true };
}

/** The study of batches given as `plants seconds` of one step, or of a whole file's text. */
export function study(text: string, terms = timing()): StepFound[] {
  const isFile = text.startsWith('step,');
  const rows = text.split('; ').map((batch) => `moving,${batch.replace(' ', ',')}`);
  return studyOf(readTrialsText(isFile ? text : ['step,plants,seconds', ...rows, ''].join('\n')), terms);
}

export function only(text: string, terms = timing()): StepFound {
  return study(text, terms)[0]!;
}

/** A text as one reads it, with plain spaces. */
export function read(text: string): string {
  return text.replaceAll('\u00a0', ' ');
}
