import { wording } from '../../language/wording';
import type { Model } from '../../model/model';

/** The screens, by the question that each answers. */
export const screenQuestions = [
  { key: 'numbers', label: wording`Numbers` },
  { key: 'plans', label: wording`Plans` },
  { key: 'beds', label: wording`Beds` },
  { key: 'what matters', label: wording`What matters` },
  { key: 'breakeven', label: wording`Breakeven` },
  { key: 'how sure', label: wording`How sure` },
  { key: 'timing', label: wording`Timing` },
  { key: 'the case', label: wording`The case` },
] as const;

/**
 * A question; or the page on how figures are worked out or the picture of how entries hang together, which stand in
 * its place; or what stands in the place of the whole model: the page on which one of one's own is set up, and a lesson
 * step by step before a class.
 */
export type ScreenQuestion = (typeof screenQuestions)[number]['key'] | 'method' | 'set up' | 'teach' | 'together';

/** Whether a page stands in the place of the whole model. */
export function standsAlone(question: ScreenQuestion): boolean {
  return question === 'set up' || question === 'teach';
}

/** Whether a page shows results, which are not to be seen before a class has guessed them. */
export function showsResults(question: ScreenQuestion): boolean {
  return !standsAlone(question) && !['numbers', 'timing', 'method'].includes(question);
}

/** What a screen is called, where it is chosen and above it. */
export function questionLabel(question: Exclude<ScreenQuestion, 'method'>): string {
  return screenQuestions.find(({ key }) => key === question)!.label;
}

/** What can be asked of a model: of its beds only where it has a crop schedule. */
export function questionsFor({ cells }: Pick<Model, 'cells'>): ScreenQuestion[] {
  const grows = cells.some(({ crop }) => crop === 'stage 1 time');
  return screenQuestions.map(({ key }) => key).filter((key) => key !== 'beds' || grows);
}

/** What stands beside the numbers until someone chooses. */
export const usualSide: ScreenQuestion = 'what matters';

export const screens: readonly ScreenQuestion[] = [
  ...screenQuestions.map(({ key }) => key),
  'method',
  'set up',
  'teach',
  'together',
];
