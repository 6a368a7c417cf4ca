/** Fixed texts of a lesson: of its sheets on paper, of its steps before a class, and of the buttons that lead there. */
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
  /** For a lesson whose answers have no figures of the model in them. */
  whichNumbers:
    'The answers are worked out with the numbers that the lesson came with; what is given, and the results, are as ' +
    'they stand now.',

  teach: 'Teach it step by step',
  hideResults: 'Hide the results until they are guessed',
  showResults: 'Show the results',
  notYet: 'Results are hidden until the class has guessed them. Each comes with the answer of its step.',
  leave: 'Back to the numbers',
  stepOf: (step: number, of: number) => `Step ${step} of ${of}`,
  guesses: 'Guesses of the class',
  howToGuess: 'Type them one behind another, with a blank between.',
  showAnswer: 'Show the answer',
  hideAnswer: 'Hide the answer',
  before: 'Before',
  next: 'Next',
  copyStep: 'Copy a link to this step',
  fillScreen: 'Fill the screen',
  leaveFullScreen: 'Leave the full screen',
  keys: 'Keys: arrows or page keys turn the steps, Enter shows the answer, F fills the screen.',
  answerMark: (answer: string) => `answer ${answer}`,
  /** Beside a guess that several made. */
  times: (count: number) => `${count} ×`,
} as const;

/** `Step 3.` taken off a question that is shown under a heading with its number. */
export function withoutNumber(question: string): string {
  return question.replace(/^(?:\p{L}+\s+)?\d+\s*[.:)]\s+/u, '');
}
