import { wording } from '../../language/wording';

/** Fixed texts of a lesson: of its sheets on paper, of its steps before a class, and of the buttons that lead there. */
export const lessonTexts = {
  printQuestions: wording`Print the sheet without answers`,
  printAnswers: wording`Print the answer sheet`,
  /** Stands below the title of the answer sheet; `subtitle` is the part of the title after its question. */
  answersOf: (subtitle: string) => wording`Answers. ${subtitle}`,
  name: wording`Name`,
  date: wording`Date`,
  given: wording`Given`,
  questions: wording`Questions`,
  questionsAndAnswers: wording`Questions and answers`,
  results: wording`Results`,
  /** For a lesson whose answers have no figures of the model in them. */
  whichNumbers: wording`The answers are worked out with the numbers that the lesson came with; what is given, and the results, are as they stand now.`,

  teach: wording`Teach it step by step`,
  hideResults: wording`Hide the results until they are guessed`,
  showResults: wording`Show the results`,
  notYet: wording`Results are hidden until the class has guessed them. Each comes with the answer of its step.`,
  leave: wording`Back to the numbers`,
  stepOf: (step: number, of: number) => wording`Step ${step} of ${of}`,
  guesses: wording`Guesses of the class`,
  howToGuess: wording`Type them one behind another, with a blank between.`,
  showAnswer: wording`Show the answer`,
  hideAnswer: wording`Hide the answer`,
  before: wording`Before`,
  next: wording`Next`,
  copyStep: wording`Copy a link to this step`,
  fillScreen: wording`Fill the screen`,
  leaveFullScreen: wording`Leave the full screen`,
  keys: wording`Keys: arrows or page keys turn the steps, Enter shows the answer, F fills the screen.`,
  answerMark: (answer: string) => wording`answer ${answer}`,
  /** Beside a guess that several made. */
  times: (count: number) => `${count} ×`,
} as const;

/** `Step 3.` taken off a question that is shown under a heading with its number. */
export function withoutNumber(question: string): string {
  return question.replace(/^(?:\p{L}+\s+)?\d+\s*[.:)]\s+/u, '');
}
