/** The screens, by the question that each answers. */
export const questions = [
  { key: 'numbers', label: 'Numbers' },
  { key: 'what matters', label: 'What matters' },
  { key: 'breakeven', label: 'Breakeven' },
] as const;

export type Question = (typeof questions)[number]['key'];

export function questionOf(text: string): Question {
  return questions.find(({ key }) => key === text)?.key ?? 'numbers';
}
