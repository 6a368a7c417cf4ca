import { wording } from '../../language/wording';
import type { Chapter } from './entry';

export const hands: Chapter = {
  heading: wording`Hands and reuse`,
  entries: [
    {
      id: 'hours',
      what: wording`Hours needed and hours paid`,
      how: wording`Seconds are paid for every plant that enters a step, also for those lost later. A hire comes in lumps: in each week the hours beyond the staff’s spare ones, but never fewer than are guaranteed; beyond one person’s hours, overtime or a second hire with the same guarantee.`,
      formulas: [
        wording`*beyond* = the larger of 0 and needed − spare`,
        wording`*paid* = the larger of *beyond* and hires × guaranteed; hires = 1, or ⌈*beyond* / one person’s hours⌉, at least 1, with second hires`,
        wording`cost of an hour = wage × (1 + on-cost)`,
      ],
      source: wording`Common practice, no source. Wage, overtime and safety rules differ by place: local law decides.`,
      limits: wording`Idle paid hours have a value only where an entry gives them one.`,
      where: wording`Beds; models have it in formulas of their own.`,
    },
    {
      id: 'standard time',
      what: wording`Standard time`,
      how: wording`The mean of what was timed, brought to a usual pace by a rating and lengthened by an allowance for rest, fetching and waiting.`,
      formulas: [
        wording`allowance as a share of the job: *T* = mean × rating × (1 + *a*)`,
        wording`allowance as a share of the day: *T* = mean × rating / (1 − *a*)`,
      ],
      source: wording`International Labour Office, Introduction to Work Study, from memory.`,
      limits: wording`The two allowances are not the same: 15 % of the day is 17.6 % of the job. The shipped models use the first and say so at the entry.`,
      where: wording`Timing; Numbers, in the models’ formulas.`,
    },
    {
      id: 'reuse',
      what: wording`Uses of a thing that comes back`,
      how: wording`A holder is lost with a chance at each use, and retired after its most uses. It is washed between uses, so one washing fewer than uses; a one-use plug is never washed.`,
      formulas: [
        wording`uses to expect: *E* = (1 − (1 − *p*)^{L}) / *p*, or *L* where *p* is 0`,
        wording`cost of a use = (price + disposal) / *E* + washing × (1 − 1/*E*)`,
      ],
      source: wording`The mean of a geometric distribution cut off at L.`,
      limits: wording`The same chance at each use, whatever its age.`,
      where: wording`The formula expected_uses.`,
    },
  ],
};
