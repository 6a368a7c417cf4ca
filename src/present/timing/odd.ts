import { wording } from '../../language/wording';
import { decimal } from '../../core/number';
import { oddScore, type OddBatch } from '../../trade/oddBatches';
import type { Format } from '../text/numberFormat';
import { ownText } from './secondsDigits';

/** Fixed texts of odd batches and of those that a person leaves out. */
export const oddTexts = {
  leaveOut: wording`Leave it out`,
  countAgain: wording`Count it again`,
  /** Stands as the reason until a person writes another. */
  usualReason: wording`odd, see what happened`,
  leftOutNow: wording`The batch is left out of every figure.`,
  countsAgain: wording`The batch counts again.`,
  method: wording`When a batch is odd`,
} as const;

/** Why a batch is flagged: `Odd: 21.40 s each where the middle is 12.90. Its score …`. */
export function oddText({ seconds, median, score }: OddBatch, format: Format): string {
  const [own, middle] = [ownText(decimal(seconds), format), ownText(decimal(median), format)];
  const limit = format.full(decimal(oddScore));
  const height = format.fixed(decimal(Math.abs(score)), 1);
  return wording`Odd: ${own}\u00a0s each, the middle batch ${middle}\u00a0s; a score of ${height} where more than ${limit} is odd. It counts until you leave it out.`;
}

/** `Left out: wind from the side.` */
export function leftOutText(reason: string): string {
  return /[.!?]$/.test(reason) ? wording`Left out: ${reason}` : wording`Left out: ${reason}.`;
}
