/** Words that several screens share. */
export const commonTexts = {
  cannotCompute: 'cannot be computed',
  today: 'today',
  difference: 'difference B − A',
  planOf: (letter: 'A' | 'B', name: string) => `${letter} ${name}`,
  nothingToAsk: 'There is nothing to ask about yet.',
  result: 'Result',
  numbersAsTable: 'The same numbers as a table',
  saveTable: 'Save this table as CSV',
  working: 'Working it out …',
  oneMoment: 'One moment …',
  goTo: (label: string) => `Go to ${label}`,
  stop: 'Stop',
  tryAgain: 'Try again',
  takeBack: 'Take it back',
  /** Why background work failed. */
  workerEndedTwice: 'the worker that does it ended twice.',
} as const;
