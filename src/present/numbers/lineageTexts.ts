import type { Cell } from '../../model/cell';
import { say, type Phrase } from '../text/phrase';

/** Fixed texts of the panel below an entry: where its number comes from, what it feeds and how to change it. */
export const lineageTexts = {
  panel: (entry: string) => `Where ${entry} comes from and what it feeds`,
  source: (source: string) => `Source: ${source}`,
  showLabels: 'Show it in labels',
  showNames: 'Show it in names',
  enteredHere: 'Entered here.',
  madeFrom: (inputs: number) => (inputs === 1 ? 'Made from one input' : `Made from ${inputs} inputs`),
  feedsNothing: 'Nothing is made from it.',
  /** Before the names of entries. */
  feeds: 'Feeds',
  /** Before the names of headlines. */
  reaches: 'Reaches the headlines',
  change: 'Change its formula',
  changeOrRange: 'Change its formula or range',
  /** The entry's name in formulas is the strong piece. */
  howToWrite: (name: string): Phrase =>
    say`A number or a formula in names, with a point for decimals. In formulas this entry is called ${name}.`,
  fields: {
    formula: 'Formula',
    everyPlan: 'In every plan',
    inPlanInstead: (plan: string) => `In plan ${plan} instead`,
    low: 'Low end of its range',
    high: 'High end of its range',
  },
  /** In a field with no text. */
  blankField: { formula: 'blank', plan: 'as in every plan', range: 'none' },
  oneBeforeStands: 'The one before stands.',
} as const;

/** An input's note and source, where it is listed with others; blank where it has neither. */
export function knownOf({ note, source }: Pick<Cell, 'note' | 'source'>): string {
  if (source === '') return note;
  return `${note} ${lineageTexts.source(source)}.`;
}
