import { wording } from '../../language/wording';

/** Words on how far draws have come; numbers as they are shown. */
export const drawsTexts = {
  making: (draws: string) => wording`Making ${draws} draws`,
  lookingForDrivers: wording`Looking for what drives the spread`,
  underWay: (doing: string, percent: number) => `${doing}, ${percent} %`,
  done: (draws: string) => wording`${draws} draws made. The same start number gives the same draws.`,
  stopped: (draws: string) => wording`Stopped after ${draws} draws.`,
  /** On paper, where not all draws were made yet. */
  printedAfter: (made: string, draws: string) => wording`Printed after ${made} of ${draws} draws.`,
  again: wording`Start again`,
  failed: (reason: string) => wording`The draws could not be made: ${reason}`,
  restarted: wording`The worker that makes the draws ended; it was started again from the first draw.`,
} as const;
