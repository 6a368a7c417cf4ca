/** Fixed texts of the sheets of a lesson, and of the buttons that print them. */
export const lessonTexts = {
  printQuestions: 'Print the sheet without answers',
  printAnswers: 'Print the answer sheet',
  /** Stands below the title of the answer sheet; `subtitle` is the part of the title after its question. */
  answersOf: (subtitle: string) => `Answers. ${subtitle}`,
  name: 'Name',
  date: 'Date',
  given: 'Given',
  questions: 'Questions',
  questionsAndAnswers: 'Questions and answers',
  results: 'Results',
  whichNumbers:
    'The answers are worked out with the numbers that the lesson came with; what is given, and the results, are as ' +
    'they stand now.',
} as const;
