import { finish, within, type Steps } from '../core/steps';
import { buildModel, buildModelInSteps } from '../model/buildModel';
import { FormulaReader, readAhead } from '../model/formulaReader';
import type { Model } from '../model/model';
import { decodeText } from './decodeText';
import { newTableFile, readTableInSteps, type TableFile } from './tableFile';
import { modelTable } from './tableKind';

/** A model with the file that it came from. */
export interface OpenedModel {
  readonly model: Model;
  readonly file: TableFile;
  /** True where the file as a whole could not be used: the model is empty, and its faults say why. */
  readonly refused: boolean;
}

const emptySheet = { columns: ['name', 'formula'], rows: [] };

function refusedBytes(decoded: Exclude<ReturnType<typeof decodeText>, { text: string }>): OpenedModel {
  const model = buildModel(emptySheet, { faults: [decoded.problem], notices: [] });
  return { model, file: newTableFile(emptySheet, modelTable), refused: true };
}

/** The model that a file's text holds. Never throws: what is wrong is in the model's faults. */
export function readModelText(text: string): OpenedModel {
  return finish(readTextInSteps(text));
}

/** The model that a file's bytes hold. Never throws: what is wrong is in the model's faults. */
export function readModel(bytes: Uint8Array): OpenedModel {
  const decoded = decodeText(bytes);
  return 'text' in decoded ? readModelText(decoded.text) : refusedBytes(decoded);
}

/** The same in steps. */
export function* readModelInSteps(bytes: Uint8Array): Steps<OpenedModel> {
  const decoded = decodeText(bytes);
  return 'text' in decoded ? yield* readTextInSteps(decoded.text) : refusedBytes(decoded);
}

/** Shares of the time after which the table is read, and its formulas; checking them takes the rest. */
const [tableRead, formulasRead] = [0.1, 0.5];

function* readTextInSteps(text: string): Steps<OpenedModel> {
  const { file, problems, notices, refused } = yield* within(0, tableRead, readTableInSteps(text, modelTable));
  const reader = new FormulaReader();
  yield* within(tableRead, formulasRead, readAhead(file.sheet, reader));
  const reading = { faults: problems, notices };
  const model = yield* within(formulasRead, 1, buildModelInSteps(file.sheet, reading, reader));
  return { model, file, refused };
}
