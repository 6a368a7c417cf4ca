import { wording } from '../../language/wording';
import type { ScreenQuestion } from '../page/questions';

/** A word of the screens and what it means, in one line. */
export interface Explained {
  readonly word: string;
  readonly means: string;
  /** The screens on which it stands. */
  readonly on: readonly ScreenQuestion[];
}

/** Words that not every grower uses, in the order in which they are met. */
export const glossary: readonly Explained[] = [
  {
    word: wording`balanced flow`,
    means: wording`The most that the places on the water can give if boards could be split and batches blended. A ceiling: whole boards always give less.`,
    on: ['numbers', 'beds'],
  },
  {
    word: wording`whole boards`,
    means: wording`Each batch fills boards of its own, as on a real farm, so some holes and some places stay empty.`,
    on: ['numbers', 'beds'],
  },
  {
    word: wording`board-week`,
    means: wording`One board lying on the water for one week. What a plant costs in room, and what room has to earn.`,
    on: ['numbers', 'beds', 'what matters'],
  },
  {
    word: wording`interval`,
    means: wording`The days from one sowing to the next.`,
    on: ['numbers', 'beds'],
  },
  {
    word: wording`plan A, plan B`,
    means: wording`The two ways of growing that stand side by side. B − A is what B brings more than A, or less with a minus.`,
    on: ['numbers', 'plans', 'what matters', 'breakeven', 'how sure', 'the case'],
  },
  {
    word: wording`range`,
    means: wording`The lowest and the highest number that you hold possible for an entry. All charts of risk go by it.`,
    on: ['numbers', 'what matters', 'breakeven', 'how sure'],
  },
  {
    word: wording`difference by one entry (swing)`,
    means: wording`How far the result moves when that one entry goes from its low to its high and nothing else changes.`,
    on: ['what matters'],
  },
  {
    word: wording`flips`,
    means: wording`The answer changes sides: what paid no longer pays, or the other way round.`,
    on: ['what matters', 'breakeven', 'the case'],
  },
  {
    word: wording`ties`,
    means: wording`Two choices come to the same money, so that it does not matter which one is taken.`,
    on: ['numbers', 'breakeven', 'how sure', 'the case'],
  },
  {
    word: wording`breakeven`,
    means: wording`The number of an entry at which the result reaches the target, or at which two plans tie.`,
    on: ['breakeven', 'the case'],
  },
  {
    word: wording`draw`,
    means: wording`One try: every unsure entry gets a number from its range by chance, and the result is worked out. Many draws show how often something happens.`,
    on: ['how sure', 'the case'],
  },
  {
    word: wording`start number`,
    means: wording`Where the row of chance numbers begins. The same start number gives the same draws, so that others can check them.`,
    on: ['how sure'],
  },
  {
    word: wording`5th and 95th percentile`,
    means: wording`Of 100 draws 5 lie below the 5th percentile and 5 above the 95th: a low and a high that are rarely passed.`,
    on: ['what matters', 'how sure'],
  },
  {
    word: wording`standard time`,
    means: wording`The timed seconds with the allowance for rest, fetching and waiting: what a plant takes over a whole day.`,
    on: ['timing'],
  },
  {
    word: wording`of the job, of the day`,
    means: wording`An allowance of the job is added to the timed seconds; one of the day is the share of the paid day in which nobody works at the job.`,
    on: ['timing'],
  },
  {
    word: wording`partial budget`,
    means: wording`Only what changes between two plans: what comes in more and costs less, against what costs more and comes in less.`,
    on: ['the case'],
  },
  {
    word: wording`payback`,
    means: wording`The years until the yearly gain has paid for what was bought, here with interest unless it says without.`,
    on: ['the case'],
  },
  {
    word: wording`net present value`,
    means: wording`All that an outlay brings over the years, less the outlay, in money of today: what comes later counts for less, by the interest it could have earned.`,
    on: ['the case'],
  },
  {
    word: wording`fixed and variable costs`,
    means: wording`Variable costs rise with each plant more, such as seed and packing; fixed ones stay as they are, such as rent.`,
    on: ['plans'],
  },
  {
    word: wording`interval of the mean`,
    means: wording`Where the true seconds lie with the chance stated, as far as these batches can tell. More batches make it narrower.`,
    on: ['timing'],
  },
];

/** Its place on the page of methods. */
export const glossaryEntry = 'words';
export const glossaryHeading = wording`Words of this app`;

/** The words that stand on a screen. */
export function wordsOn(question: ScreenQuestion): Explained[] {
  return glossary.filter(({ on }) => on.includes(question));
}
