import { decimal, isNumberText, numberToText } from '../core/number';

/** How a comma between digits is taken. */
export type CommaAs = 'decimal' | 'thousands';

/** Characters that are typed or pasted for others. */
const characters: readonly (readonly [RegExp, string])[] = [
  [/[\u00a0\u2007\u2009\u200a\u202f\ufeff\u200b\r\n]/g, ' '],
  [/["'`\u2018\u2019\u201a\u201c\u201d\u201e\u00ab\u00bb]/g, ''],
  [/[×·∙⋅✕]/g, '*'],
  [/[÷∕]/g, '/'],
  [/[−–—‐‑]/g, '-'],
  [/≤/g, '<='],
  [/≥/g, '>='],
  [/≠|<>/g, '!='],
  [/\*\*/g, '^'],
  [/&&?/g, ' and '],
  [/\|\|?/g, ' or '],
  [/^\s*=+/, ''],
  [/^\s*\+/, ''],
];

const number = /(?<![\w.])(?:\d+\.?\d*|\.\d+)(?![\w.])/;

/** Whether a place of a formula is inside the brackets of a function, where commas part its values. */
function isAmongValues(text: string, at: number): boolean {
  const open: boolean[] = [];
  for (let i = 0; i < at; i += 1) {
    if (text[i] === '(') open.push(/[A-Za-z0-9_]\s*$/.test(text.slice(0, i)));
    if (text[i] === ')') open.pop();
  }
  return open.includes(true);
}

function withoutCommas(text: string, commaAs: CommaAs): string {
  const decimals = (whole: string, at: number): string => (isAmongValues(text, at) ? whole : whole.replace(',', '.'));
  const thousands = (whole: string, at: number): string =>
    isAmongValues(text, at) ? whole : whole.replaceAll(',', '');
  return commaAs === 'decimal'
    ? text.replaceAll(/(?<![\d.,])\d+,\d+(?![\d.,])/g, decimals)
    : text.replaceAll(/(?<![\d.,])\d{1,3}(?:,\d{3})+(?![\d,])/g, thousands);
}

/** `12 %` as 0.12, and `allowance %` as allowance: an entry has its unit itself. */
function withoutPerCent(text: string): string {
  const share = new RegExp(`(${number.source})\\s*%`, 'g');
  const divided = (_whole: string, digits: string): string => numberToText(decimal(digits).div(100));
  return text.replaceAll(share, divided).replaceAll(/(?<=[A-Za-z0-9_])\s*%/g, '');
}

/** `2 x wage` and `3x4` with a sign for times. */
function withTimes(text: string): string {
  return text
    .replaceAll(/(?<=\d)\s*[xX]\s*(?=\d)/g, ' * ')
    .replaceAll(/(?<=[\w)])(\s+)[xX](\s+)(?=[\w(])/g, '$1*$2')
    .replaceAll(/(?<=\))\s*[xX]\s*(?=[\w(])/g, ' * ');
}

/** `2 wage` and `2 (a + b)` with the sign that is missing. */
function withMissingSigns(text: string, isName: (word: string) => boolean): string {
  const beforeName = new RegExp(`(${number.source.replace('(?![\\w.])', '')})\\s*([A-Za-z_]\\w*)`, 'g');
  return text
    .replaceAll(beforeName, (whole, digits: string, word: string) => (isName(word) ? `${digits} * ${word}` : whole))
    .replaceAll(new RegExp(`(${number.source})\\s*\\(`, 'g'), '$1 * (')
    .replaceAll(/\)\s*\(/g, ') * (');
}

/**
 * A formula as it was typed, written as formulas are: plain quotes gone, a point for decimals, `*` for `x`, a share for
 * per cent, no sign before it. It may still be none.
 * @param isName whether a word is the name of an entry
 */
export function mended(typed: string, commaAs: CommaAs, isName: (word: string) => boolean): string {
  const replaced = characters.reduce((text, [found, by]) => text.replaceAll(new RegExp(found, 'g'), by), typed);
  const times = isName('x') ? replaced : withTimes(replaced);
  const text = withMissingSigns(withoutPerCent(withoutCommas(times, commaAs)), isName);
  const squeezed = text.trim().replaceAll(/ {2,}/g, ' ');
  return isNumberText(squeezed.replaceAll(' ', '')) ? squeezed.replaceAll(' ', '') : squeezed;
}
