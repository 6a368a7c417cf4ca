import { wording } from '../../language/wording';
import type { Digits } from './digitChoices';

/** Words of what takes tables and charts out of the page. */
export const takeOutTexts = {
  copy: wording`Copy the table`,
  saveCsv: wording`Save it as CSV`,
  saveSvg: wording`Save the picture as SVG`,
  savePng: wording`Save the picture as PNG`,
  digits: wording`Numbers`,
  digitsChoices: { shown: wording`rounded as shown`, all: wording`with all digits` } satisfies Record<Digits, string>,
  copied: wording`Copied.`,
  copiedAsText: wording`Copied as plain text, with tabs between the columns.`,
  notCopied: wording`This browser does not let the page copy. Save the table as CSV and open that file instead.`,
  noPicture: wording`This browser cannot make that picture. Save it as SVG instead.`,
  saved: (name: string) => wording`Saved as ${name}.`,
  stillWorking: wording`Still being worked out. In a moment all of it can be taken out.`,
} as const;
