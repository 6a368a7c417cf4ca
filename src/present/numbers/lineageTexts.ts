import { wording, wordingOf } from '../../language/wording';
import type { Cell } from '../../model/cell';
import { say, type Phrase } from '../text/phrase';

/** What the panel below an entry says of where its number comes from, what it feeds and how to change it. */
export const lineageTexts = {
  panel: (entry: string) => wording`Where ${entry} comes from and what it feeds`,
  source: (source: string) => wording`Source: ${source}`,
  showLabels: wording`Show it in labels`,
  showNames: wording`Show it in names`,
  enteredHere: wording`Entered here.`,
  madeFrom: (inputs: number) => (inputs === 1 ? wording`Made from one input` : wording`Made from ${inputs} inputs`),
  feedsNothing: wording`Nothing is made from it.`,
  /** Before the names of entries. */
  feeds: wording`Feeds`,
  /** Before the names of headlines. */
  reaches: wording`Reaches the headlines`,
  change: wording`Change its formula`,
  changeOrRange: wording`Change its formula or range`,
  /** The entry's name in formulas is the strong piece. */
  howToWrite: (name: string): Phrase =>
    say`A number or a formula in names, with a point for decimals. In formulas this entry is called ${name}.`,
  fields: {
    formula: wording`Formula`,
    everyPlan: wording`In every plan`,
    inPlanInstead: (plan: string) => wording`In plan ${plan} instead`,
    low: wording`Low end of its range`,
    high: wording`High end of its range`,
  },
  /** In a field with no text. */
  blankField: { formula: wording`blank`, plan: wording`as in every plan`, range: wordingOf('no end of a range')`none` },
  oneBeforeStands: wording`The one before stands.`,
} as const;

/** What is known of an input where it is one of several: its note and its source; blank for neither. */
export function knownOf({ note }: Pick<Cell, 'note'>, source: string): string {
  if (source === '') return note;
  return `${note} ${lineageTexts.source(source)}.`;
}
