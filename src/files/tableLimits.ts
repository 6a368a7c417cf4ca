import { wording, wordingOf } from '../language/wording';
import { problem, type Problem } from '../core/problem';
import { finish, type Steps } from '../core/steps';
import { longestFormula } from '../formula/scan';
import { field, planOfColumn, type Sheet } from '../model/sheet';
import type { Delimiter } from './csv';

/** Most columns of a table: plans, known ones and others. */
const columnLimit = 2_000;
/** Most characters of one field. */
const fieldLimit = 1_000_000;
/** Fields whose length is looked at in one step. */
const fieldsPerStep = 20_000;
/** A formula of more characters than this is a long one. */
const longFormula = 1_000;
/** Most characters of all long formulas of a model, a shared one counted for each plan: some 3 µs each to check. */
const longFormulaLimit = 300_000;
/** Most characters of all formulas, counted in the same way. */
const formulaLimit = 3_000_000;
/** Columns whose texts are taken apart, and the most characters of one of them. */
const formedColumns = ['unit', 'correlation', 'choices'];
const formedLimit = 1_000_000;
/** Most entries of all plans: rows times plans. */
const entryLimit = 300_000;

/** How the language writes large numbers: its tag (BCP 47). */
const locale = wordingOf('the BCP 47 tag of the language, for large numbers')`en`;

/** A count as the language writes it, its thousands apart. */
export const writtenCount = (count: number): string => count.toLocaleString(locale);

export function tooManyColumns(count: number): Problem | undefined {
  if (count <= columnLimit) return undefined;
  const fix = wording`A table may have ${writtenCount(columnLimit)}: take out what is not needed, or split the plans over files.`;
  return problem('too-many-columns', wording`too many columns: ${writtenCount(count)}. ${fix}`, { row: 1 });
}

/** A field that is too long, found before anything is parsed: looking for the end of a quote takes long in some. */
export function longField(text: string, delimiter: Delimiter, rows = Infinity): Problem | undefined {
  return finish(longFieldInSteps(text, delimiter, rows));
}

/** The same in steps. @param rows how many rows to look at */
export function* longFieldInSteps(text: string, delimiter: Delimiter, rows = Infinity): Steps<Problem | undefined> {
  if (text.length <= fieldLimit) return undefined;
  const ends = new RegExp(`[${delimiter}\\r\\n]`, 'g');
  let row = 1;
  let [lineStart, seen] = [0, 0];
  for (let from = 0; from < text.length && row <= rows;) {
    seen += 1;
    if (seen % fieldsPerStep === 0) yield from / text.length;
    const isQuoted = text[from] === '"';
    const end = isQuoted ? closingQuote(text, from, from + fieldLimit) : nextOf(ends, text, from);
    if (end - from > fieldLimit) return fieldProblem(text.slice(from, from + 40), row, isQuoted);
    const next = isQuoted ? nextOf(ends, text, end) : end;
    const isLineEnd = text[next] !== delimiter;
    if (isLineEnd && next > lineStart) row += 1;
    from = next + 1;
    if (isLineEnd) lineStart = from;
  }
  return undefined;
}

/** Where a pattern is found next; the end of the text where it is not. */
function nextOf(pattern: RegExp, text: string, from: number): number {
  pattern.lastIndex = from;
  return pattern.exec(text)?.index ?? text.length;
}

/** The place after the quote that closes the one at `from`; beyond the limit where there is none up to it. */
function closingQuote(text: string, from: number, limit: number): number {
  for (let at = text.indexOf('"', from + 1); at !== -1 && at <= limit; at = text.indexOf('"', at + 2)) {
    if (text[at + 1] !== '"') return at + 1;
  }
  return text.length <= limit ? text.length : limit + 1;
}

function fieldProblem(text: string, row: number, isQuoted: boolean): Problem {
  const start = text.replace(/\s+/g, ' ');
  const fix = isQuoted ? wording`Close the quote that it begins with, or shorten it.` : wording`Shorten it.`;
  const message = wording`field of more than ${writtenCount(fieldLimit)} characters: ${start}… (row ${writtenCount(row)}). ${fix}`;
  return problem('field-length', message, { row, text: start });
}

/** Why a model with too many entries in all plans, or too much text in its formulas, is refused. */
export function tooMuchToCheck({ columns, rows }: Sheet): Problem | undefined {
  const plans = columns.filter((column) => planOfColumn(column) !== undefined);
  if (rows.length * plans.length > entryLimit) return entriesProblem(rows.length, plans.length);
  const tooLong = formedColumns.find((column) => charactersIn(rows, column) > formedLimit);
  if (tooLong !== undefined) return formedProblem(tooLong);
  let [sum, long, count] = [0, 0, 0];
  const add = (text: string, times: number): void => {
    // One that is too long by itself is not parsed.
    if (text.length > longestFormula) return;
    sum += text.length * times;
    if (text.length <= longFormula) return;
    long += text.length * times;
    count += 1;
  };
  for (const row of rows) {
    const own = plans.map((column) => field(row, column)).filter((text) => text !== '');
    own.forEach((text) => add(text, 1));
    add(field(row, 'formula'), Math.max(1, plans.length - own.length));
    if (long > longFormulaLimit) return longProblem(row.row, count);
    if (sum > formulaLimit) return formulasProblem(row.row);
  }
  return undefined;
}

function charactersIn(rows: Sheet['rows'], column: string): number {
  return rows.reduce((sum, row) => sum + field(row, column).length, 0);
}

function formedProblem(column: string): Problem {
  const message = wording`column too long: ${column}, more than ${writtenCount(formedLimit)} characters in all rows. Shorten what it holds.`;
  return problem('column-length', message, { row: 1, column, text: column });
}

function entriesProblem(rows: number, plans: number): Problem {
  const what = wording`too many entries in all plans: ${writtenCount(rows)} rows in ${writtenCount(plans)} plans`;
  const fix = wording`Together they may be ${writtenCount(entryLimit)}; split the plans over files.`;
  return problem('too-many-entries', `${what}. ${fix}`, { row: 1 });
}

function formulasProblem(row: number): Problem {
  const message = wording`formulas too long together: more than ${writtenCount(formulaLimit)} characters up to row ${writtenCount(row)}, one shared by plans counted for each. Split the model over files.`;
  return problem('formulas-length', message, { row });
}

function longProblem(row: number, count: number): Problem {
  const message = wording`formulas too long together: ${writtenCount(count)} of more than ${writtenCount(longFormula)} characters each, more than ${writtenCount(longFormulaLimit)} characters up to row ${writtenCount(row)}. Give parts of them cells of their own.`;
  return problem('formulas-length', message, { row });
}
