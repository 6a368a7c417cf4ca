import { wording } from '../../language/wording';

/** The question that each shipped model answers and what it is about, by the name of its file without the ending. */
export const shippedModelTexts = {
  'transplant-hire': {
    question: wording`Does it pay to hire a transplanter?`,
    about: wording`Straight to finishing boards, or a crowded nursery first and a hand to move each plant.`,
  },
  'density-lesson': {
    question: wording`How many boards should the nursery have?`,
    about: wording`A lesson for paper and pencil: one spacing, two spacings, and a shortcut that misleads.`,
  },
  'plug-media': {
    question: wording`What may a plug cost?`,
    about: wording`Foam, peat or a holder that comes back: cost for a finished plant, and the dearest price that still ties.`,
  },
  'three-stage': {
    question: wording`Is a second move worth it?`,
    about: wording`One, two or three board widths, whole boards and the hands for each move.`,
  },
  'channel-or-bench': {
    question: wording`Should pots stand pot to pot before they are spaced?`,
    about: wording`The same arithmetic on benches or channels that cost money by area and week.`,
  },
} as const;

export type ShippedKey = keyof typeof shippedModelTexts;
