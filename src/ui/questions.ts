import type { Model } from '../model/model';

/** The screens, by the question that each answers. */
export const questions = [
  { key: 'numbers', label: 'Numbers' },
  { key: 'beds', label: 'Beds' },
  { key: 'what matters', label: 'What matters' },
  { key: 'breakeven', label: 'Breakeven' },
  { key: 'how sure', label: 'How sure' },
  { key: 'timing', label: 'Timing' },
  { key: 'the case', label: 'The case' },
] as const;

/** A question, or the page on how figures are worked out, which stands in its place. */
export type Question = (typeof questions)[number]['key'] | 'method';

/** What can be asked of a model: of its beds only where it has a crop schedule. */
export function questionsFor({ cells }: Pick<Model, 'cells'>): Question[] {
  const grows = cells.some(({ crop }) => crop === 'stage 1 time');
  return questions.map(({ key }) => key).filter((key) => key !== 'beds' || grows);
}

/** What stands beside the numbers until someone chooses. */
export const usualSide: Question = 'what matters';

export function questionOf(text: string): Question {
  if (text === 'method') return text;
  return questions.find(({ key }) => key === text)?.key ?? 'numbers';
}
