/** Texts of the page around its screens: its name, its links to parts of the page, and that it is busy. */
export const frameTexts = {
  program: 'Raftmargin',
  windowTitle: (model: string) => (model === '' ? 'Raftmargin' : `${model} – Raftmargin`),
  toNumbers: 'To the numbers',
  toQuestions: 'To the questions',
  questions: 'Questions',
  howWorked: 'How everything is worked out',
  backTo: (entry: string) => `Back to ${entry}`,
  backWhereYouWere: 'Back to where you were',
  opening: 'Opening …',
  drawing: 'Drawing …',
  notShown: (reason: string) => `This question could not be shown: ${reason}`,
  untouched: 'Your numbers are untouched.',
  loadAgain: 'Load the page again',
} as const;
