import { wording } from '../../language/wording';

/** What a caution is about. */
export type CautionTopic = 'foam' | 'hands' | 'electricity' | 'food' | 'wages' | 'money';

/** A caution, to be shown where the work that it warns of is planned. */
export interface Caution {
  readonly topic: CautionTopic;
  readonly title: string;
  readonly text: string;
  /** Where the caution is from; blank: common practice, no source. */
  readonly source: string;
}

/** Limits of what the program knows, and dangers of the work, by topic. */
export const cautions: readonly Caution[] = [
  {
    topic: 'foam',
    title: wording`Cutting foam boards`,
    text: wording`Foam dust irritates skin, eyes and lungs: wear eye protection and a dust mask, work outdoors or with extraction, and sweep up before it reaches the water. A hot wire or knife gives off styrene and other fumes: cut cold, or vent well. Foam burns, so keep flames and sparks away. The safety data sheet of your own boards decides.`,
    source: wording`Health page on cutting polystyrene foam (healthyliving.azcentral.com, styrofoam cutting hazards); manufacturer’s fire data for EPS (hendrenplastics.com, fire precaution)`,
  },
  {
    topic: 'hands',
    title: wording`Hand work, hour after hour`,
    text: wording`Moving plants repeats one motion thousands of times, often stooped over water. Back, shoulder, arm and hand pain are what farm workers report most. Raise the work to waist height, change tasks and sides, rest before it hurts, and count that rest in the allowance.`,
    source: wording`NIOSH, Simple Solutions: Ergonomics for Farm Workers (2001), nasdonline.org/7432`,
  },
  {
    topic: 'electricity',
    title: wording`Electricity near water`,
    text: wording`Pumps, air stones and lamps stand next to open water. Every outlet there needs protection that trips on a leak to ground, and gear made for wet places. Unplug before you reach in. The electrical code of your place and a licensed electrician decide what is needed.`,
    source: wording`MEMIC on ground-fault circuit interrupters; digest of US rules for wet places (NEC 210.8(B), OSHA 1910.305(j)(2))`,
  },
  {
    topic: 'food',
    title: wording`Clean water, clean boards`,
    text: wording`Leaves are eaten raw. Water that touches them at or after harvest, and water for washing hands, must be free of detectable generic E. coli; stop and put it right where it is found. Wash and sanitise boards between crops, and keep a written plan. The food safety rules of your place decide.`,
    source: wording`Tennessee Department of Agriculture on the Produce Safety Rule, post-harvest water; LGMA commodity guidelines`,
  },
  {
    topic: 'wages',
    title: wording`Wage and overtime rules`,
    text: wording`Least pay, overtime, rests, breaks and what an employer owes on top differ by place and change from year to year. Piece pay must still reach the least pay by the hour. Check the law of your place, or ask someone licensed to advise on it, before you offer hours.`,
    source: wording`US examples: Fair Labor Standards Act 13(b)(12); New York farm overtime (Cornell, blogs.cornell.edu/enychp)`,
  },
  {
    topic: 'money',
    title: wording`No financial advice`,
    text: wording`The figures follow from the numbers you enter, guesses included, and leave out what you leave out. They are no financial, tax or legal advice: have a decision that matters looked at by someone who is licensed to give it.`,
    source: '',
  },
];

/** The cautions of some topics, in the order of the list. */
export function cautionsFor(topics: readonly CautionTopic[]): Caution[] {
  return cautions.filter(({ topic }) => topics.includes(topic));
}
