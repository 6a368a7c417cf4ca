import { link, sayLinked, type LinkedPhrase } from '../text/linkedPhrase';
import { commonTexts } from '../text/commonTexts';

/** What an entry's row says around its numbers, and to those who hear it. */
export const entryTexts = {
  noValue: commonTexts.noValue,
  /** A difference of nothing. */
  same: 'same',
  /** Heard before a difference. */
  difference: 'difference: ',
  /** Heard before the value in a plan. */
  valueOf: (plan: string) => `${plan}: `,
  ownOf: (plan: string) => `own number of plan ${plan}`,
  /** Below an entry that is another by name. */
  from: (entry: string): LinkedPhrase => sayLinked`from ${link(entry)}`,
  /** Below an entry that has no value because another has none. */
  cannotWithout: (entry: string): LinkedPhrase => sayLinked`cannot be computed without ${link(entry)}`,
  inPlan: (plan: string) => `in plan ${plan}`,
  rangeOf: (field: string) => `${field}, range`,
  outside: (value: string) => `${value}, outside its range`,
  /** Between the ends of a range on paper, where a style sets it. */
  to: ' to',
  /** Of a field whose text cannot be taken. */
  stands: (number: string) => `${number} stands.`,
} as const;
