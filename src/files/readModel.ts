import { buildModel } from '../model/buildModel';
import { FormulaReader, readAhead } from '../model/formulaReader';
import type { Model } from '../model/model';
import { decodeText } from './decodeText';
import { newModelFile, readModelFile, readModelFileInSlices, type ModelFile, type ReadFile } from './modelFile';

/** A model with the file that it came from. */
export interface OpenedModel {
  readonly model: Model;
  readonly file: ModelFile;
  /** True where the file as a whole could not be used: the model is empty, and its faults say why. */
  readonly refused: boolean;
}

const emptySheet = { columns: ['name', 'formula'], rows: [] };

function opened({ file, problems, notices, refused }: ReadFile, reader = new FormulaReader()): OpenedModel {
  return { model: buildModel(file.sheet, { faults: problems, notices }, reader), file, refused };
}

function refusedBytes(decoded: Exclude<ReturnType<typeof decodeText>, { text: string }>): OpenedModel {
  const model = buildModel(emptySheet, { faults: [decoded.problem], notices: [] });
  return { model, file: newModelFile(emptySheet), refused: true };
}

/** The model that a file's text holds. Never throws: what is wrong is in the model's faults. */
export function readModelText(text: string): OpenedModel {
  return opened(readModelFile(text));
}

/** The model that a file's bytes hold. Never throws: what is wrong is in the model's faults. */
export function readModel(bytes: Uint8Array): OpenedModel {
  const decoded = decodeText(bytes);
  return 'text' in decoded ? readModelText(decoded.text) : refusedBytes(decoded);
}

/** The same in steps of a few milliseconds, each yielding the share that has been read; the last checks the model. */
export function* readModelInSlices(bytes: Uint8Array): Generator<number, OpenedModel> {
  const decoded = decodeText(bytes);
  if (!('text' in decoded)) return refusedBytes(decoded);
  const read = yield* upTo(shareOfTable, readModelFileInSlices(decoded.text));
  const reader = new FormulaReader();
  yield* upTo(1, readAhead(read.file.sheet, reader), shareOfTable);
  return opened(read, reader);
}

/** The share of the time that the table takes; its formulas take the rest. */
const shareOfTable = 0.25;

/** The same steps with their shares, 0 to 1, laid between two others. */
function* upTo<T>(end: number, steps: Generator<number, T>, start = 0): Generator<number, T> {
  for (;;) {
    const step = steps.next();
    if (step.done === true) return step.value;
    yield start + step.value * (end - start);
  }
}
