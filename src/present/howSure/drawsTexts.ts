/** Words on how far draws have come; numbers as they are shown. */
export const drawsTexts = {
  making: (draws: string) => `Making ${draws} draws`,
  lookingForDrivers: 'Looking for what drives the spread',
  underWay: (doing: string, percent: number) => `${doing}, ${percent} %`,
  done: (draws: string) => `${draws} draws made. The same start number gives the same draws.`,
  stopped: (draws: string) => `Stopped after ${draws} draws.`,
  /** On paper, where not all draws were made yet. */
  printedAfter: (made: string, draws: string) => `Printed after ${made} of ${draws} draws.`,
  again: 'Start again',
  failed: (reason: string) => `The draws could not be made: ${reason}`,
  restarted: 'The worker that makes the draws ended; it was started again from the first draw.',
} as const;
