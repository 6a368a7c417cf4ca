import { wording, wordingOf } from '../../language/wording';
import { sayLinked, link, type LinkedPhrase } from '../text/linkedPhrase';

/** What stands on the screen of all plans, around names and numbers. */
export const plansTexts = {
  heading: wording`Plans`,
  list: wording`The plans of this model`,
  listExplained: wording`The first is the reference: the others are measured against it.`,
  /** In place of the name of a model's only plan where the file gives it none. */
  unnamed: wording`The only plan, without a name so far`,
  reference: wording`reference`,
  copy: wording`Copy`,
  rename: wording`Rename`,
  earlier: wordingOf('a place in a list')`Earlier`,
  later: wordingOf('a place in a list')`Later`,
  remove: wording`Remove`,
  /** Heard after the word of a button: which plan it is for. */
  forPlan: (plan: string) => ` ${plan}`,
  newName: wording`Its new name`,
  copyName: wording`Name of the copy`,
  firstName: wording`Name of the plan as it is now`,
  useName: wording`Use this name`,
  makeCopy: wording`Make the copy`,
  cancel: wording`Leave it`,
  noName: wording`plan without a name: blank. Enter one, or press Escape to leave it.`,
  sideBySide: wording`Side by side`,
  tableRegion: wording`All plans side by side`,
  /** Heard before how far a value lies from the reference. */
  fromReference: wording`against the reference: `,
  fromReferenceIn: (plan: string) => wording`${plan}, against the reference`,
  bestExplained: wording`Below each number: how far it lies from the reference. “Most” and “least” mark the best of a row, where the entry’s place in the budget or its name says which way is better.`,
  compare: wording`Compare two of them`,
  comparePlan: wordingOf('compare one plan with another')`Compare`,
  compareWith: wordingOf('compare one plan with another')`with`,
  compareExplained: wording`These two stand as A and B in the headlines, the numbers and every other question.`,
  oneChange: wording`Change one thing in one plan`,
  oneChangeNeedsTwo: wording`A number for one plan only needs a second plan: copy the one above first.`,
  inPlan: wording`in plan`,
  input: wordingOf('a number in one plan')`Change`,
  /** Stands in the name of the field too, as those who hear it are told. */
  ownNumber: wording`own number`,
  shared: wording`Shared by the plans:`,
  sharedFormula: wording`a formula`,
  useSharedNumber: wording`Use the shared number again`,
  useSharedFormula: wording`Use the shared formula again`,
  noneShared: wording`No number is shared: each plan has its own.`,
  usesShared: (plan: string) => wording`${plan} uses what is shared: a number here is its alone.`,
  hasOwn: (plan: string) => wording`${plan} has this number alone.`,
  hasOwnFormula: (plan: string) =>
    wording`${plan} calculates it by a formula of its own: a number here takes its place.`,
  goToEntry: wording`Go to the entry`,
  onePlan: wording`Enterprise budget of one plan`,
  differences: wording`What differs`,
  differencesRegion: wording`Entries that differ`,
  entry: wording`Entry`,
  unit: wording`Unit`,
  anotherWay: wording`the same by another way`,
} as const;

/** Where a model has no headline, what stands in the table in its place, and how to have more. */
export function noHeadlines(result: string): LinkedPhrase {
  return sayLinked`No entry is a headline, so ${link(result)} stands alone here. Give entries the role headline in the file to see more of them.`;
}
