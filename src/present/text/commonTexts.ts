import { wording } from '../../language/wording';

/** Words that several screens share. They import nothing, so that they load with whatever needs them first. */
export const commonTexts = {
  // Of numbers.
  cannotCompute: wording`cannot be computed`,
  noValue: wording`no value`,
  unknown: wording`unknown`,
  today: wording`today`,
  /**
   * With a space that does not break.
   * @param number as it is shown
   */
  todayAt: (number: string) => wording`today\u00a0${number}`,
  /** The second plan's number less the first one's. */
  secondLessFirst: wording`B − A`,
  difference: wording`difference B − A`,
  planOf: (letter: 'A' | 'B', name: string) => `${letter} ${name}`,

  // Of a question, its pictures and its tables.
  nothingToAsk: wording`There is nothing to ask about yet.`,
  result: wording`Result`,
  spreadDrivers: wording`Which guesses drive the spread`,
  entry: wording`entry`,
  group: wording`group`,
  itsRange: wording`its range`,
  fromTo: wording`from – to`,
  numbersAsTable: wording`The same numbers as a table`,
  numbersAsTables: wording`The same numbers as tables`,

  // While something is under way.
  working: wording`Working it out …`,
  workingLines: wording`Working out the lines …`,
  oneMoment: wording`One moment …`,
  /** On paper, in the place of an answer that was still to come. */
  notComputed: wording`Not computed when this was printed.`,
  /** A reason for which background work could not be done. */
  workerEndedTwice: wording`the worker that does it ended twice.`,

  // What can be done.
  goTo: (label: string) => wording`Go to ${label}`,
  goToEntry: wording`Go to the entry`,
  backTo: (place: string) => wording`Back to ${place}`,
  stop: wording`Stop`,
  tryAgain: wording`Try again`,
  takeBack: wording`Take it back`,
  saveFile: wording`Save a file`,
  printQuestion: wording`Print this question`,
  printPage: wording`Print the whole page`,
  keepMine: wording`Keep mine`,
} as const;
