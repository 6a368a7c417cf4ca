import { wording } from '../../language/wording';
import { link, sayLinked, type LinkedPhrase } from '../text/linkedPhrase';
import { commonTexts } from '../text/commonTexts';

/** Fixed texts of an entry's row, some of them for screen readers. */
export const entryTexts = {
  noValue: commonTexts.noValue,
  /** In the place of a result that a class is to guess first. */
  hidden: wording`hidden`,
  /** A difference of nothing. */
  same: wording`same`,
  /** For screen readers, before a difference. */
  difference: wording`difference: `,
  /** For screen readers, before the value in a plan. */
  valueOf: (plan: string) => `${plan}: `,
  ownOf: (plan: string) => wording`own number of plan ${plan}`,
  /** Below an entry whose formula is just the name of another. */
  from: (entry: string): LinkedPhrase => sayLinked`from ${link(entry)}`,
  /** Below an entry without a value because another entry has none. */
  cannotWithout: (entry: string): LinkedPhrase => sayLinked`cannot be computed without ${link(entry)}`,
  inPlan: (plan: string) => wording`in plan ${plan}`,
  rangeOf: (field: string) => wording`${field}, range`,
  outside: (value: string) => wording`${value}, outside its range`,
  /** Between the ends of a range in print, where the style sheet shows it. */
  to: wording` to`,
  /** Below a field whose text cannot be used: the number that still counts. */
  stands: (number: string) => wording`${number} stands.`,
} as const;
