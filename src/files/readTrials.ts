import { wording } from '../language/wording';
import { nearest } from '../core/nearest';
import { problem, type Problem } from '../core/problem';
import type { Reading } from '../model/findings';
import type { Sheet } from '../model/sheet';
import type { Batch, Trials } from '../model/trials';
import { decodeText } from './decodeText';
import { isBatch, readBatch } from './readTrialsBatch';
import { readTable } from './tableFile';
import { emptyFile } from './tableHeader';
import { trialsTable } from './tableKind';

const knownColumns = [...trialsTable.needed, 'worker', 'rating', 'date', 'lost', 'note', 'way', 'left_out'];
/** A rating up to this is likelier a share than per cent. */
const largestShare = 2;

/** The trials that a file's bytes hold. Never throws: what is wrong is in the faults. */
export function readTrials(bytes: Uint8Array): Trials {
  if (bytes.length === 0) return refusedTrials(emptyFile(trialsTable, wording`empty file: 0 bytes.`));
  const decoded = decodeText(bytes);
  return 'text' in decoded ? readTrialsText(decoded.text) : refusedTrials(decoded.problem);
}

/** The trials that a file's text holds. Never throws: what is wrong is in the faults. */
export function readTrialsText(text: string): Trials {
  const { file, problems, notices, refused } = readTable(text, trialsTable);
  if (refused) return refusedTrials(...problems);
  return trialsOf(file.sheet, { faults: problems, notices });
}

/**
 * The trials of rows as they stand now, such as after an edit.
 * @param reading what was found while their text was read; a row with a fault there gives no batch, so leave that fault
 *   out once the row is written anew
 */
export function trialsOf(sheet: Sheet, reading: Reading = { faults: [], notices: [] }): Trials {
  const unsound = new Set(reading.faults.map(({ where }) => where.row).filter((row) => row > 1));
  const batches: Batch[] = [];
  const faults: Problem[] = [...reading.faults, ...(sheet.rows.length === 0 ? [noTrials()] : [])];
  for (const row of sheet.rows) {
    const read = readBatch(row);
    if (!isBatch(read)) faults.push(...read);
    else if (!unsound.has(row.row)) batches.push(read);
  }
  faults.sort((a, b) => a.where.row - b.where.row);
  const unknown = sheet.columns.filter((column) => !knownColumns.includes(column));
  const notices = [...unknown.map(unknownColumn), ...reading.notices, ...batches.filter(isShare).map(shareNotice)];
  return { sheet, batches, faults, notices, reading, refused: false };
}

function refusedTrials(...faults: readonly Problem[]): Trials {
  const sheet: Sheet = { columns: [], rows: [] };
  return { sheet, batches: [], faults, notices: [], reading: { faults, notices: [] }, refused: true };
}

function unknownColumn(name: string): Problem {
  const near = nearest(name.toLowerCase(), knownColumns);
  const fix = near === undefined ? wording`Nothing needs mending.` : wording`Did you mean ${near}?`;
  const message = wording`column not read: ${name}. ${fix}`;
  return problem('unknown-column', message, { row: 1, column: name, text: name });
}

function noTrials(): Problem {
  return problem('no-trials', wording`no trials: the header is the only row. Add a row for each batch that you timed.`);
}

function isShare({ rating }: Batch): boolean {
  return rating.lte(largestShare);
}

function shareNotice({ row, rating }: Batch): Problem {
  const text = rating.toString();
  const message = wording`rating that may be a share: ${text}. It is read as ${text} per cent; 100 is a normal pace.`;
  return problem('rating-share', message, { row, column: 'rating', text });
}
