import { sayLinked, link, type LinkedPhrase } from '../text/linkedPhrase';

/** What stands on the screen of all plans, around names and numbers. */
export const plansTexts = {
  heading: 'Plans',
  list: 'The plans of this model',
  listExplained: 'The first is the reference: the others are measured against it.',
  /** In place of the name of a model's only plan where the file gives it none. */
  unnamed: 'The only plan, without a name so far',
  reference: 'reference',
  copy: 'Copy',
  rename: 'Rename',
  earlier: 'Earlier',
  later: 'Later',
  remove: 'Remove',
  /** Heard after the word of a button: which plan it is for. */
  forPlan: (plan: string) => ` ${plan}`,
  newName: 'Its new name',
  copyName: 'Name of the copy',
  firstName: 'Name of the plan as it is now',
  useName: 'Use this name',
  makeCopy: 'Make the copy',
  cancel: 'Leave it',
  noName: 'plan without a name: blank. Enter one, or press Escape to leave it.',
  sideBySide: 'Side by side',
  tableRegion: 'All plans side by side',
  /** Heard before how far a value lies from the reference. */
  fromReference: 'against the reference: ',
  fromReferenceIn: (plan: string) => `${plan}, against the reference`,
  bestExplained:
    'Below each number: how far it lies from the reference. “Most” and “least” mark the best of a row, where the ' +
    'entry’s place in the budget or its name says which way is better.',
  compare: 'Compare two of them',
  comparePlan: 'Compare',
  compareWith: 'with',
  compareExplained: 'These two stand as A and B in the headlines, the numbers and every other question.',
  oneChange: 'Change one thing in one plan',
  oneChangeNeedsTwo: 'A number for one plan only needs a second plan: copy the one above first.',
  inPlan: 'in plan',
  input: 'Change',
  /** Stands in the name of the field too, as those who hear it are told. */
  ownNumber: 'own number',
  shared: 'Shared by the plans:',
  sharedFormula: 'a formula',
  useSharedNumber: 'Use the shared number again',
  useSharedFormula: 'Use the shared formula again',
  noneShared: 'No number is shared: each plan has its own.',
  usesShared: (plan: string) => `${plan} uses what is shared: a number here is its alone.`,
  hasOwn: (plan: string) => `${plan} has this number alone.`,
  hasOwnFormula: (plan: string) => `${plan} calculates it by a formula of its own: a number here takes its place.`,
  goToEntry: 'Go to the entry',
  onePlan: 'Enterprise budget of one plan',
  differences: 'What differs',
  differencesRegion: 'Entries that differ',
  entry: 'Entry',
  unit: 'Unit',
  anotherWay: 'the same by another way',
} as const;

/** Where a model has no headline, what stands in the table in its place, and how to have more. */
export function noHeadlines(result: string): LinkedPhrase {
  return sayLinked`No entry is a headline, so ${link(result)} stands alone here. Give entries the role headline in the file to see more of them.`;
}
