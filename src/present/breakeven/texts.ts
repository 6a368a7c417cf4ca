import { commonTexts } from '../text/commonTexts';

/** Fixed texts of the breakeven screen: the answer, its settings and its picture. */
export const breakevenTexts = {
  whatItTakes: 'It takes an entry that is calculated, and an input to move: give one a formula and another a number.',
  moves: 'as this input moves',
  usualQuestions: 'Usual questions',
  draw: 'Draw',
  views: { both: 'both plans', difference: commonTexts.difference },
  /** Of a model with further plans. */
  furtherViews: { all: 'all plans', both: 'A and B' },
  target: 'target',
} as const;

/** Labels of the fields for the range that is searched. */
export const rangeTexts = {
  legend: 'Looked at',
  from: 'looked at from',
  to: 'to',
  usual: 'Usual range',
  drawn: (from: string, to: string) => `Drawn from ${from} to ${to}.`,
  whole: 'Draw all of it',
  guess: 'This range is a guess: today’s 0 has no range of its own. Enter the ends that you mean.',
  todayOutside: (today: string) => `Today’s ${today} lies outside: the picture reaches to it, the answer does not.`,
} as const;

/** Fixed texts of the breakeven tables. */
export const breakevenTableTexts = {
  none: 'No crossing and no break in the range looked at.',
  turns: 'Crossings and breaks',
  turnsCaption: (exact: boolean) =>
    exact ? 'Crossings and breaks' : 'Crossings and breaks (being worked out exactly …)',
  happens: 'what happens there',
  fromToday: 'from today',
  lines: 'The lines as numbers',
} as const;
