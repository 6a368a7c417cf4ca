import { wording } from '../language/wording';
import { shortened } from '../core/shortened';
import { problem, type Problem } from '../core/problem';
import { recordSlices, type CsvRecord, type Delimiter } from './csv';
import { tableKinds, type TableKind } from './tableKind';
import { longField, tooManyColumns } from './tableLimits';

/** The header row of a table, understood. */
export interface Header {
  readonly delimiter: Delimiter;
  /** Column names in file order, each once, without blank ones. */
  readonly columns: readonly string[];
  /** The column that each field of a record holds; undefined for a column without a name or with one already taken. */
  readonly columnAt: readonly (string | undefined)[];
  readonly problems: readonly Problem[];
}

const delimiters: readonly Delimiter[] = [',', ';'];

/** Finds the delimiter by which the first row has all needed columns, or says why the file is refused. */
export function readHeader(text: string, kind: TableKind): Header | { readonly refusal: Problem } {
  const found: string[][] = [];
  for (const delimiter of delimiters) {
    const tooLong = longField(text, delimiter, 1);
    if (tooLong?.where.row === 1) return { refusal: tooLong };
    const record = firstRecord(text, delimiter);
    const names = record?.fields.map((name) => name.trim()) ?? [];
    const tooMany = tooManyColumns(names.length);
    if (tooMany !== undefined) return { refusal: tooMany };
    if (missingFrom(names, kind).length === 0) return headerOf(delimiter, names, record?.problem);
    found.push(names);
  }
  return {
    refusal: refusalOf(
      found.reduce((most, names) => (names.length > most.length ? names : most)),
      kind,
    ),
  };
}

function firstRecord(text: string, delimiter: Delimiter): CsvRecord | undefined {
  for (const slice of recordSlices(text, delimiter)) {
    const record = slice.find(({ row }) => row === 1);
    if (record) return record;
  }
  return undefined;
}

function missingFrom(names: readonly string[], { needed }: TableKind): string[] {
  return needed.filter((column) => !names.includes(column));
}

function headerOf(delimiter: Delimiter, names: readonly string[], quoteFault: Problem | undefined): Header {
  const columnAt = names.map((name, index) => (name === '' || names.indexOf(name) < index ? undefined : name));
  const columns = columnAt.filter((column) => column !== undefined);
  const repeated = names.filter((name, index) => name !== '' && names.indexOf(name) < index);
  const problems = [...(quoteFault ? [quoteFault] : []), ...[...new Set(repeated)].map(repeatedColumn)];
  return { delimiter, columns, columnAt, problems };
}

function repeatedColumn(name: string): Problem {
  const message = wording`two columns of one name: ${name}. The first counts; rename the other or take it out.`;
  return problem('duplicate-column', message, { row: 1, column: name, text: name });
}

function refusalOf(names: readonly string[], kind: TableKind): Problem {
  if (names.length === 0) return emptyFile(kind, wording`nothing in the file: no row at all.`);
  const found = names.join(', ');
  const text = shortened(found, 200);
  const byTabs = names
    .join(',')
    .split('\t')
    .map((name) => name.trim());
  if (missingFrom(byTabs, kind).length === 0) {
    const message = wording`columns separated by tabs: ${byTabs.join(', ')}. Save the file as CSV with commas or semicolons.`;
    return problem('wrong-delimiter', message, { row: 1, text });
  }
  const other = tableKinds.find((one) => one !== kind && missingFrom(names, one).length === 0);
  return other === undefined ? missingColumns(names, text, kind) : otherTable(text, other);
}

function otherTable(text: string, { misplaced }: TableKind): Problem {
  return problem('other-table', misplaced(text), { row: 1, text });
}

/** @param what what is wrong with the file, as a sentence */
export function emptyFile({ start, needed }: TableKind, what: string): Problem {
  return problem('empty-file', `${what} ${start(needed.join(', '))}`);
}

function missingColumns(names: readonly string[], text: string, kind: TableKind): Problem {
  const missing = missingFrom(names, kind);
  const hints = missing.map((column) =>
    hint(
      column,
      names.find((name) => name.toLowerCase() === column),
    ),
  );
  const [columns, fix] = [missing.join(', '), hints.join(' ')];
  const message =
    missing.length > 1
      ? wording`missing columns: ${columns}. The first row has: ${text}. ${fix}`
      : wording`missing column: ${columns}. The first row has: ${text}. ${fix}`;
  return problem('missing-column', message, { row: 1, column: missing[0] ?? '', text });
}

function hint(column: string, other: string | undefined): string {
  return other === undefined
    ? wording`Add a column "${column}".`
    : wording`Write "${other}" in small letters: ${column}.`;
}
