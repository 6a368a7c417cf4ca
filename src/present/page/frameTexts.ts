import { commonTexts } from '../text/commonTexts';

/** What the page says around its screens: its name, what leads from one part to another, and that it is at work. */
export const frameTexts = {
  program: 'Raftmargin',
  windowTitle: (model: string) => (model === '' ? 'Raftmargin' : `${model} – Raftmargin`),
  toNumbers: 'To the numbers',
  toQuestions: 'To the questions',
  questions: 'Questions',
  howWorked: 'How everything is worked out',
  backTo: commonTexts.backTo,
  backWhereYouWere: 'Back to where you were',
  opening: 'Opening …',
  drawing: 'Drawing …',
  notShown: (reason: string) => `This question could not be shown: ${reason}`,
  untouched: 'Your numbers are untouched.',
  loadAgain: 'Load the page again',
} as const;
