import { decimal, type Decimal } from '../../core/number';
import type { Cell } from '../../model/cell';
import type { Model } from '../../model/model';
import type { LostShare } from '../../trade/lostShare';
import type { Format } from '../text/numberFormat';
import { say, type Phrase } from '../text/phrase';
import type { TimeOffer } from './intoModel';
import { putPlace, whyNoColumns } from './intoModel';
import { toPut } from './secondsDigits';
import { atStart, perCent, percentText, stepName } from './sentences';
import type { TimingTerms } from './terms';

/** An input that holds the share lost in a step, or the share kept. */
export interface ShareTarget {
  readonly cell: Cell;
  readonly holds: 'lost' | 'kept';
}

const lostWords = /\b(?:loss(?:es)?|lost|culls?|culled|waste|p[eé]rdid[ao]s?|pierden?|mermas?|descart\w*)\b/i;
const keptWords = /\b(?:surviv\w*|kept|good enough|left alive|superviv\w*|quedan|aptas)\b/i;

/** The inputs of a plan that a lost share can fill, by their words: plain shares of what is lost or of what is kept. */
export function shareTargets({ cells, plans }: Model, plan: number): ShareTarget[] {
  return cells.flatMap((cell): ShareTarget[] => {
    const isShare = cell.unit?.dimension.size === 0 && cell.unitText.trim() === '%';
    if (!isShare || plans[plan]?.contents[cell.id]?.kind !== 'input') return [];
    const words = `${cell.label} ${cell.name.replaceAll('_', ' ')}`;
    if (keptWords.test(words)) return [{ cell, holds: 'kept' }];
    return lostWords.test(words) ? [{ cell, holds: 'lost' }] : [];
  });
}

/** The lost share of a step with its interval. */
export function lossSentence(step: string, found: LostShare, timing: TimingTerms, format: Format): Phrase {
  const { lost, plants, share, interval } = found;
  const [from, to] = interval.map((end) => perCent(end, format));
  const confidence = percentText(timing.confidence, format);
  return say`${atStart(stepName(step))}: ${format.full(lost)} of ${format.full(plants)} plants lost or culled, ${perCent(share, format)}, between ${from!} and ${to!} at ${confidence} confidence.`;
}

const hundred = decimal(100);

/** What a lost share would put into an input, in per cent; undefined where the plan has no number there. */
export function shareOffer(
  model: Model,
  plan: number,
  { cell, holds }: ShareTarget,
  { share, interval, batches }: LostShare,
): TimeOffer | undefined {
  const content = model.plans[plan]?.contents[cell.id];
  if (content?.kind !== 'input') return undefined;
  const inUnit = (lost: Decimal): Decimal => {
    const percent = toPut(lost.times(hundred));
    return holds === 'lost' ? percent : hundred.minus(percent);
  };
  const noRange = whyNoColumns(model, content.own);
  const [low, high] = interval.map(inUnit).sort((a, b) => a.cmp(b));
  return {
    cell,
    today: content.number,
    value: inUnit(share),
    range: noRange === '' ? [low!, high!] : undefined,
    noRange,
    batches,
    ...putPlace(model, plan, cell, content.own),
  };
}
