/** Words that several screens share. They import nothing, so that they load with whatever needs them first. */
export const commonTexts = {
  // Of numbers.
  cannotCompute: 'cannot be computed',
  noValue: 'no value',
  unknown: 'unknown',
  today: 'today',
  /**
   * With a space that does not break.
   * @param number as it is shown
   */
  todayAt: (number: string) => `today\u00a0${number}`,
  /** The second plan's number less the first one's. */
  secondLessFirst: 'B − A',
  difference: 'difference B − A',
  planOf: (letter: 'A' | 'B', name: string) => `${letter} ${name}`,

  // Of a question, its pictures and its tables.
  nothingToAsk: 'There is nothing to ask about yet.',
  result: 'Result',
  spreadDrivers: 'Which guesses drive the spread',
  entry: 'entry',
  group: 'group',
  itsRange: 'its range',
  fromTo: 'from – to',
  numbersAsTable: 'The same numbers as a table',
  numbersAsTables: 'The same numbers as tables',

  // While something is under way.
  working: 'Working it out …',
  workingLines: 'Working out the lines …',
  oneMoment: 'One moment …',
  /** On paper, in the place of an answer that was still to come. */
  notComputed: 'Not computed when this was printed.',
  /** A reason for which background work could not be done. */
  workerEndedTwice: 'the worker that does it ended twice.',

  // What can be done.
  goTo: (label: string) => `Go to ${label}`,
  goToEntry: 'Go to the entry',
  backTo: (place: string) => `Back to ${place}`,
  stop: 'Stop',
  tryAgain: 'Try again',
  takeBack: 'Take it back',
  saveFile: 'Save a file',
  printQuestion: 'Print this question',
  printPage: 'Print the whole page',
  keepMine: 'Keep mine',
} as const;
