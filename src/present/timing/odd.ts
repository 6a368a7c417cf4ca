import { decimal } from '../../core/number';
import { oddScore, type OddBatch } from '../../trade/oddBatches';
import { space, type Format } from '../text/numberFormat';
import { ownText } from './secondsDigits';

/** Fixed texts of odd batches and of those that a person leaves out. */
export const oddTexts = {
  leaveOut: 'Leave it out',
  countAgain: 'Count it again',
  /** Stands as the reason until a person writes another. */
  usualReason: 'odd, see what happened',
  leftOutNow: 'The batch is left out of every figure.',
  countsAgain: 'The batch counts again.',
  method: 'When a batch is odd',
} as const;

/** Why a batch is flagged: `Odd: 21.40 s each where the middle is 12.90. Its score …`. */
export function oddText({ seconds, median, score }: OddBatch, format: Format): string {
  const [own, middle] = [seconds, median].map((value) => ownText(decimal(value), format));
  const limit = format.full(decimal(oddScore));
  const measure = `a score of ${format.fixed(decimal(Math.abs(score)), 1)} where more than ${limit} is odd`;
  return `Odd: ${own}${space}s each, the middle batch ${middle}${space}s; ${measure}. It counts until you leave it out.`;
}

/** `Left out: wind from the side.` */
export function leftOutText(reason: string): string {
  return `Left out: ${reason}${/[.!?]$/.test(reason) ? '' : '.'}`;
}
