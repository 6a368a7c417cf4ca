import type { Digits } from './digitChoices';

/** Words of what takes tables and charts out of the page. */
export const takeOutTexts = {
  copy: 'Copy the table',
  saveCsv: 'Save it as CSV',
  saveSvg: 'Save the picture as SVG',
  savePng: 'Save the picture as PNG',
  digits: 'Numbers',
  digitsChoices: { shown: 'rounded as shown', all: 'with all digits' } satisfies Record<Digits, string>,
  copied: 'Copied.',
  copiedAsText: 'Copied as plain text, with tabs between the columns.',
  notCopied: 'This browser does not let the page copy. Save the table as CSV and open that file instead.',
  noPicture: 'This browser cannot make that picture. Save it as SVG instead.',
  saved: (name: string) => `Saved as ${name}.`,
  stillWorking: 'Still being worked out. In a moment all of it can be taken out.',
} as const;
