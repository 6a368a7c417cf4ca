import { isRecord } from './plainData';
import { isSheetStep, type SheetStep } from './sheetStep';

/** A step of a model on the disk; it leads from the state before its number to the state of its number. */
export interface StepRecord {
  readonly version: 1;
  /** Of the model. */
  readonly id: string;
  readonly number: number;
  readonly step: SheetStep;
}

/** Which state of the kept steps a model's work is: beside the work, in the same writing. */
export interface StepMark {
  readonly at: number;
  /** Checksum of the work's sheet. */
  readonly sum: number;
  /** Steps that may not be on the disk, where the page was left before it said so. */
  readonly waiting?: readonly StepRecord[];
}

/** What is written of the steps beside a model's work. */
export interface StepsWriting {
  readonly mark: StepMark;
  readonly put: readonly StepRecord[];
  /** The first and the last number that stay; all others of the model go. */
  readonly stay: readonly [first: number, last: number];
}

/** Whether what the storage gave is a step that this version of the program can read. */
export function isStepRecord(value: unknown): value is StepRecord {
  if (!isRecord(value)) return false;
  const { version, id, number, step } = value;
  return version === 1 && typeof id === 'string' && Number.isSafeInteger(number) && isSheetStep(step);
}

/** Whether what stands beside a model's work tells of steps in a way that can be read. */
export function isStepMark(value: unknown): value is StepMark {
  if (!isRecord(value)) return false;
  const { at, sum, waiting } = value;
  return Number.isSafeInteger(at) && Number.isInteger(sum) && (waiting === undefined || Array.isArray(waiting));
}
