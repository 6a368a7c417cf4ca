import { wording } from '../language/wording';
import { planOfColumn } from '../model/sheet';

/** What a CSV file with a row of column names is a table of. */
export interface TableKind {
  /** What its messages call the file. */
  readonly file: string;
  /** What its rows make up, which a file that is too long should be split into parts of. */
  readonly holds: string;
  /** The columns without which the file is refused. */
  readonly needed: readonly string[];
  /** Whether a column holds numbers, so that a decimal comma in it is one. */
  holdsNumbers(column: string): boolean;
  /** The column that names the cell which a row speaks of; blank where rows speak of none. */
  readonly cellColumn: string;
  /** What to do with such a file that was taken for one of another kind. */
  readonly instead: string;
}

const ofModels: ReadonlySet<string> = new Set(['formula', 'low', 'high', 'step']);

export const modelTable: TableKind = {
  file: wording`model file`,
  holds: wording`the model`,
  needed: ['name', 'formula'],
  holdsNumbers: (column) => ofModels.has(column) || planOfColumn(column) !== undefined,
  cellColumn: 'name',
  instead: wording`On the page: “Open a file”. On the command line: any command but time.`,
};

const ofTrials: ReadonlySet<string> = new Set(['plants', 'seconds', 'rating', 'lost']);

export const trialsTable: TableKind = {
  file: wording`trials file`,
  holds: wording`the trials`,
  needed: ['step', 'plants', 'seconds'],
  holdsNumbers: (column) => ofTrials.has(column),
  cellColumn: '',
  instead: wording`On the page: “Open trials” under Timing. On the command line: time.`,
};

/** Every kind of table that is read. */
export const tableKinds: readonly TableKind[] = [modelTable, trialsTable];
