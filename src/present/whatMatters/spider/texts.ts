import { wording } from '../../../language/wording';
import { printedUnit } from '../../text/printedUnit';
import type { TornadoSubject } from '../tornado/sentences';
import { commonTexts } from '../../text/commonTexts';

/** Fixed texts of the spider lines and of their table. */
export const spiderTexts = {
  across: wording`change from today`,
  tickAfter: ' %',
  table: wording`The same lines as a table`,
  tableRegion: wording`Table of the lines`,
  heads: [commonTexts.entry, wording`change`, wording`number`, wording`result`],
} as const;

/** The caption of the lines: `Margin, B − A, EUR/year`. */
export function spiderCaption({ result, of }: Pick<TornadoSubject, 'result' | 'of'>): string {
  const whose = of.kind === 'difference' ? commonTexts.secondLessFirst : '';
  return [result.label, whose, printedUnit(result.unitText)].filter(Boolean).join(', ');
}

/** The caption of their table, which holds float64 numbers until the exact ones are computed. */
export function spiderTableCaption(caption: string, exact: boolean): string {
  return exact ? caption : wording`${caption} (being worked out exactly …)`;
}

/** What the figures of the key are. */
export function spiderFigures({ result }: Pick<TornadoSubject, 'result'>): string {
  return [wording`for each per cent`, printedUnit(result.unitText)].filter(Boolean).join(', ');
}
