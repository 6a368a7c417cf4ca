import { wording, wordingOf } from '../../language/wording';
import { commonTexts } from '../text/commonTexts';

/** Fixed texts of the breakeven screen: the answer, its settings and its picture. */
export const breakevenTexts = {
  whatItTakes: wording`It takes an entry that is calculated, and an input to move: give one a formula and another a number.`,
  moves: wording`as this input moves`,
  usualQuestions: wording`Usual questions`,
  draw: wording`Draw`,
  /** Above what is said of choices, of which nothing is drawn. */
  compare: wording`Compare`,
  choices: wording`The result with each choice`,
  views: { both: wording`both plans`, difference: commonTexts.difference },
  /** Of a model with further plans. */
  furtherViews: { all: wording`all plans`, both: wording`A and B` },
  target: wording`target`,
} as const;

/** Labels of the fields for the range that is searched. */
export const rangeTexts = {
  legend: wording`Looked at`,
  from: wording`looked at from`,
  to: wordingOf('of an interval')`to`,
  usual: wording`Usual range`,
  drawn: (from: string, to: string) => wording`Drawn from ${from} to ${to}.`,
  whole: wording`Draw all of it`,
  guess: wording`This range is a guess: today’s 0 has no range of its own. Enter the ends that you mean.`,
  todayOutside: (today: string) =>
    wording`Today’s ${today} lies outside: the picture reaches to it, the answer does not.`,
} as const;

/** Fixed texts of the breakeven tables. */
export const breakevenTableTexts = {
  none: wording`No crossing and no break in the range looked at.`,
  turns: wording`Crossings and breaks`,
  turnsCaption: (exact: boolean) =>
    exact ? wording`Crossings and breaks` : wording`Crossings and breaks (being worked out exactly …)`,
  happens: wording`what happens there`,
  fromToday: wording`from today`,
  lines: wording`The lines as numbers`,
} as const;
