import { wording } from '../language/wording';
import { planOfColumn } from '../model/sheet';

/** What a CSV file with a row of column names is a table of. */
export interface TableKind {
  /** What an empty file of its kind should start with. @param columns the needed ones */
  readonly start: (columns: string) => string;
  /** What is wrong with a file that is too long, and what would mend it. @param limit the most rows */
  readonly tooManyRows: (limit: string) => string;
  /** The columns without which the file is refused. */
  readonly needed: readonly string[];
  /** Whether a column holds numbers, so that a decimal comma in it is one. */
  holdsNumbers(column: string): boolean;
  /** The column that names the cell which a row speaks of; blank where rows speak of none. */
  readonly cellColumn: string;
  /** What is wrong where such a file was taken for one of another kind. @param columns those it has */
  readonly misplaced: (columns: string) => string;
}

const ofModels: ReadonlySet<string> = new Set(['formula', 'low', 'high', 'step']);

export const modelTable: TableKind = {
  start: (columns) => wording`A model file starts with a row of column names: ${columns}.`,
  tooManyRows: (limit) => wording`too many rows: more than ${limit}. Split the model into smaller files.`,
  needed: ['name', 'formula'],
  holdsNumbers: (column) => ofModels.has(column) || planOfColumn(column) !== undefined,
  cellColumn: 'name',
  misplaced: (columns) =>
    wording`a model file, not a trials file: ${columns}. On the page: “Open a file”. On the command line: any command but time.`,
};

const ofTrials: ReadonlySet<string> = new Set(['plants', 'seconds', 'rating', 'lost']);

export const trialsTable: TableKind = {
  start: (columns) => wording`A trials file starts with a row of column names: ${columns}.`,
  tooManyRows: (limit) => wording`too many rows: more than ${limit}. Split the trials into smaller files.`,
  needed: ['step', 'plants', 'seconds'],
  holdsNumbers: (column) => ofTrials.has(column),
  cellColumn: '',
  misplaced: (columns) =>
    wording`a trials file, not a model file: ${columns}. On the page: “Open trials” under Timing. On the command line: time.`,
};

/** Every kind of table that is read. */
export const tableKinds: readonly TableKind[] = [modelTable, trialsTable];
