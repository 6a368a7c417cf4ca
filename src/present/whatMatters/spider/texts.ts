import { printedUnit } from '../../text/printedUnit';
import type { TornadoSubject } from '../tornado/sentences';
import { commonTexts } from '../../text/commonTexts';

/** Fixed texts of the spider lines and of their table. */
export const spiderTexts = {
  across: 'change from today',
  tickAfter: ' %',
  table: 'The same lines as a table',
  tableRegion: 'Table of the lines',
  heads: [commonTexts.entry, 'change', 'number', 'result'],
} as const;

/** The caption of the lines: `Margin, B − A, EUR/year`. */
export function spiderCaption({ result, of }: Pick<TornadoSubject, 'result' | 'of'>): string {
  const whose = of.kind === 'difference' ? commonTexts.secondLessFirst : '';
  return [result.label, whose, printedUnit(result.unitText)].filter(Boolean).join(', ');
}

/** The caption of their table, which holds float64 numbers until the exact ones are computed. */
export function spiderTableCaption(caption: string, exact: boolean): string {
  return exact ? caption : `${caption} (being worked out exactly …)`;
}

/** What the figures of the key are. */
export function spiderFigures({ result }: Pick<TornadoSubject, 'result'>): string {
  return ['for each per cent', printedUnit(result.unitText)].filter(Boolean).join(', ');
}
