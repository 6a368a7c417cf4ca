import { readdirSync, readFileSync } from 'node:fs';
import { readModel, readModelText } from '../../src/files/readModel';
import { readTrials, readTrialsText } from '../../src/files/readTrials';
import { readTable } from '../../src/files/tableFile';
import { trialsTable } from '../../src/files/tableKind';
import { writeTable } from '../../src/files/writeTable';
import type { Model } from '../../src/model/model';
import { withField, withRow, type Sheet } from '../../src/model/sheet';
import { evaluatePlan, errorSentence } from '../../src/model/values';
import type { Chance } from '../kill/chance';
import { damaged, oneOf, slipIn, type FuzzKind } from './kind';

const textsIn = (folder: string): string[] =>
  readdirSync(folder)
    .filter((name) => name.endsWith('.csv'))
    .map((name) => readFileSync(`${folder}/${name}`, 'utf8'));
const models = textsIn('models').map((text) => text.split('\n'));
const trials = textsIn('models/trials').map((text) => text.split('\n'));

/** The head of a file and some of its lines, damaged. */
function someOf(chance: Chance, files: readonly (readonly string[])[], most: number): string {
  const [head = '', ...lines] = oneOf(chance, files);
  const from = chance.whole(0, lines.length);
  const text = [head, ...lines.slice(from, from + chance.whole(1, most))].join(oneOf(chance, ['\n', '\n', '\r\n']));
  return damaged(chance, text);
}

/** Now and then with a byte that no text has. */
function bytesOf(chance: Chance, text: string): Uint8Array {
  const bytes = new TextEncoder().encode(text);
  if (chance.whole(0, 8) === 0 && bytes.length > 0) bytes[chance.whole(0, bytes.length)] = chance.whole(0, 256);
  return bytes;
}

function messagesOf(model: Model): string[] {
  const errors = model.plans.flatMap((plan) => {
    const values = evaluatePlan(plan);
    return [...values.errors].map(([cell, error]) => errorSentence(error, cell, model.cells));
  });
  return [...model.faults.map(({ message }) => message), ...errors];
}

/** What differs where one field of a sheet is written and read again. */
function writtenAgain(chance: Chance, sheet: Sheet, written: (changed: Sheet) => Sheet): string {
  if (sheet.rows.length === 0 || sheet.columns.length === 0) return '';
  const [row, column] = [oneOf(chance, sheet.rows), oneOf(chance, sheet.columns)];
  const changed = withRow(sheet, withField(row, column, oneOf(chance, ['x', '1.5', 'a "b", c;\nd', ' '])));
  const again = written(changed);
  const texts = ({ columns, rows }: Sheet): string =>
    JSON.stringify(rows.map(({ fields }) => columns.map((name) => fields.get(name) ?? '')).filter(isWritten));
  return texts(again) === texts(changed) ? '' : 'other texts after writing and reading again';
}

const isWritten = (texts: readonly string[]): boolean => texts.some((text) => text.trim() !== '');

function modelCase(chance: Chance): string {
  const text = someOf(chance, models, 30);
  const opened = chance.whole(0, 2) === 0 ? readModel(bytesOf(chance, text)) : readModelText(text);
  const slip = messagesOf(opened.model)
    .map((message) => slipIn(message, text))
    .find((found) => found !== '');
  if (slip !== undefined) return slip;
  const { file, model } = opened;
  const again = readModelText(text);
  if (writeTable(again.file, again.model.sheet) !== text) return 'not written as it was read';
  if (opened.refused || model.reading.faults.length > 0) return '';
  return writtenAgain(chance, model.sheet, (sheet) => readModelText(writeTable(file, sheet)).model.sheet);
}

function trialsCase(chance: Chance): string {
  const text = someOf(chance, trials, 30);
  const read = chance.whole(0, 2) === 0 ? readTrials(bytesOf(chance, text)) : readTrialsText(text);
  const messages = [...read.faults, ...read.notices].map(({ message }) => slipIn(message, text));
  const { file, problems, refused } = readTable(text, trialsTable);
  if (writeTable(file, file.sheet) !== text) return 'not written as it was read';
  const slip = messages.find((found) => found !== '');
  if (slip !== undefined || refused || problems.length > 0) return slip ?? '';
  return writtenAgain(chance, file.sheet, (sheet) => readTable(writeTable(file, sheet), trialsTable).file.sheet);
}

export const modelFiles: FuzzKind = { name: 'model files', share: 6, run: modelCase };
export const trialsFiles: FuzzKind = { name: 'timed trials', share: 12, run: trialsCase };
