import { wording } from '../../language/wording';
import { say } from '../text/phrase';

/** Why there is no case, and what would make one. */
export const noCaseTexts = {
  onePlan: wording`A case is made for going from one plan to another, and this model has one plan.`,
  addPlans: say`Add two columns to its file, named ${wording`plan: Today`} and ${wording`plan: Tomorrow`} or as you like. In each, write what that plan does differently, and leave the rest blank.`,
  noMarks: wording`No entry of this model is marked as a line of the yearly budget.`,
  addMarks: say`In the column ${'budget'} of its file write ${'return'} beside what is taken in and ${'cost'} beside what is spent, each thing once, in money a year such as EUR/year. What changes between the plans is then added up here.`,
  mixedUnits: wording`The lines of the budget cannot be added up: not all are in one currency a year.`,
  noUnit: wording`no unit`,
  alignUnits: wording`Give all of them the same unit, such as EUR/year.`,
} as const;
