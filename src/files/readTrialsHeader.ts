import { nearest } from '../core/nearest';
import { problem, type Problem } from '../core/problem';
import { recordSlices, type CsvRecord, type Delimiter } from './csv';

/** The header row of a trials file, understood. */
export interface TrialsHeader {
  readonly delimiter: Delimiter;
  /** The column that each field of a record holds; undefined for a column without a name or with one already taken. */
  readonly columnAt: readonly (string | undefined)[];
  readonly faults: readonly Problem[];
  readonly notices: readonly Problem[];
}

const neededColumns = ['step', 'plants', 'seconds'];
const knownColumns = [...neededColumns, 'worker', 'rating', 'date', 'lost', 'note'];
const delimiters: readonly Delimiter[] = [',', ';'];
const mostShown = 200;

/** Finds the delimiter by which the first row has all needed columns, or says why the file is refused. */
export function readTrialsHeader(text: string): TrialsHeader | { readonly refusal: Problem } {
  const found: string[][] = [];
  for (const delimiter of delimiters) {
    const record = firstRecord(text, delimiter);
    const names = record?.fields.map((name) => name.trim()) ?? [];
    if (missingFrom(names).length === 0) return headerOf(delimiter, names, record?.problem);
    found.push(names);
  }
  return { refusal: refusalOf(found.reduce((most, names) => (names.length > most.length ? names : most))) };
}

/** Why there is no header: the file is empty. */
export function emptyTrials(): Problem {
  const fix = `Start a trials file with a row of column names: ${neededColumns.join(', ')}.`;
  return problem('empty-file', `empty file: no row at all. ${fix}`);
}

function firstRecord(text: string, delimiter: Delimiter): CsvRecord | undefined {
  for (const slice of recordSlices(text, delimiter)) {
    const record = slice.find(({ row }) => row === 1);
    if (record) return record;
  }
  return undefined;
}

function missingFrom(names: readonly string[]): string[] {
  return neededColumns.filter((column) => !names.includes(column));
}

function headerOf(delimiter: Delimiter, names: readonly string[], quoteFault: Problem | undefined): TrialsHeader {
  const columnAt = names.map((name, at) => (name === '' || names.indexOf(name) < at ? undefined : name));
  const repeated = new Set(names.filter((name, at) => name !== '' && names.indexOf(name) < at));
  const unknown = columnAt.filter((name) => name !== undefined && !knownColumns.includes(name));
  return {
    delimiter,
    columnAt,
    faults: [...(quoteFault ? [quoteFault] : []), ...[...repeated].map(repeatedColumn)],
    notices: unknown.map((name) => unknownColumn(name ?? '')),
  };
}

function repeatedColumn(name: string): Problem {
  const message = `two columns of one name: ${name}. The first counts; rename the other or take it out.`;
  return problem('duplicate-column', message, { row: 1, column: name, text: name });
}

function unknownColumn(name: string): Problem {
  const near = nearest(name.toLowerCase(), knownColumns);
  const fix = near === undefined ? 'Nothing needs mending.' : `Did you mean ${near}?`;
  const message = `column not read: ${name}. ${fix}`;
  return problem('unknown-column', message, { row: 1, column: name, text: name });
}

function refusalOf(names: readonly string[]): Problem {
  if (names.length === 0) return emptyTrials();
  const found = names.join(', ');
  const text = found.length > mostShown ? `${found.slice(0, mostShown)}…` : found;
  const byTabs = names.join(',').split('\t');
  if (missingFrom(byTabs.map((name) => name.trim())).length > 0) return missingColumns(names, text);
  const message = `columns separated by tabs: ${byTabs.join(', ')}. Save the file as CSV with commas or semicolons.`;
  return problem('wrong-delimiter', message, { row: 1, text });
}

function missingColumns(names: readonly string[], text: string): Problem {
  const missing = missingFrom(names);
  const what = missing.length > 1 ? 'missing columns' : 'missing column';
  const fixes = missing.map((column) => {
    const other = names.find((name) => name.toLowerCase() === column);
    return other === undefined ? `Add a column "${column}".` : `Write "${other}" in small letters: ${column}.`;
  });
  const message = `${what}: ${missing.join(', ')}. The first row has: ${text}. ${fixes.join(' ')}`;
  return problem('missing-column', message, { row: 1, column: missing[0] ?? '', text });
}
