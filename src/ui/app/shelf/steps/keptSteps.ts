import type { Sheet } from '../../../../model/sheet';
import type { ModelStore } from '../../store/modelStore';
import type { ShelfDatabase } from '../database';
import type { ShelfWork } from '../record';
import { readSteps } from './readSteps';
import { sheetSum } from './sheetSum';
import { stepBetween, weightOf, type SheetStep } from './sheetStep';
import type { StepRecord, StepsWriting } from './stepRecord';

/** Steps of a model that are kept on each side of its present state, and what they may weigh together. */
export const mostSteps = 100;
const mostWeight = 400_000;

/** States of a model, one after the other, of which the first has a number and each later one the next. */
interface Numbered {
  readonly first: number;
  readonly sheets: readonly Sheet[];
}

/** Keeps the steps of undo and redo beside the work of their model. */
export interface KeptSteps {
  /** Brings back the steps of a model that this page has opened; until then none of its steps are written. */
  readonly bringBack: (work: ShelfWork) => Promise<void>;
  /**
   * What is to be written beside work; undefined where nothing may be written yet.
   * @param isLeft whether the page is left, so that nobody hears whether it was written
   */
  readonly writing: (work: ShelfWork, isLeft?: boolean) => StepsWriting | undefined;
  /** Notes that a writing failed: the next one, which comes by itself, writes all. */
  readonly failed: () => void;
}

const stepsTo = new WeakMap<Sheet, { readonly from: Sheet; readonly step: SheetStep; readonly weight: number }>();

/** The step from one state to the next, worked out once. */
function stepTo(sheet: Sheet, from: Sheet): { readonly step: SheetStep; readonly weight: number } {
  const known = stepsTo.get(sheet);
  if (known?.from === from) return known;
  const step = stepBetween(from, sheet);
  const made = { from, step, weight: weightOf(step) };
  stepsTo.set(sheet, made);
  return made;
}

/** The latest states before the present one that are kept, the present one, and those after it. */
function keptPart(past: readonly Sheet[], now: Sheet, future: readonly Sheet[]): { sheets: Sheet[]; at: number } {
  const sheets = [...past.slice(-mostSteps), now, ...future.slice(0, mostSteps)];
  const at = Math.min(past.length, mostSteps);
  let weight = 0;
  const fits = (i: number): boolean => (weight += stepTo(sheets[i]!, sheets[i - 1]!).weight) <= mostWeight;
  let first = at;
  while (first > 0 && fits(first)) first -= 1;
  let last = at;
  while (last < sheets.length - 1 && fits(last + 1)) last += 1;
  return { sheets: sheets.slice(first, last + 1), at: at - first };
}

/** How many states, from the first, two lists have in common once the second begins where it does in the first. */
function inCommon({ sheets: old }: Numbered, sheets: readonly Sheet[], from: number): number {
  let count = 0;
  while (count < sheets.length && sheets[count] === old[from + count]) count += 1;
  return count;
}

/** Compares the states to be kept with those on the disk. */
function writingOf(id: string, old: Numbered | undefined, sheets: readonly Sheet[]): [Numbered, StepRecord[]] {
  const from = old === undefined ? -1 : old.sheets.indexOf(sheets[0]!);
  const highest = old === undefined ? 0 : old.first + old.sheets.length;
  const first = old !== undefined && from >= 0 ? old.first + from : highest;
  const same = old !== undefined && from >= 0 ? inCommon(old, sheets, from) : 1;
  const put = sheets.flatMap((sheet, i): StepRecord[] => {
    if (i < Math.max(1, same)) return [];
    return [{ version: 1, id, number: first + i, step: stepTo(sheet, sheets[i - 1]!).step }];
  });
  return [{ first, sheets }, put];
}

/** @param again is called where work was written without its steps, which could not be written then */
export function createKeptSteps(database: ShelfDatabase, store: ModelStore, again: () => void): KeptSteps {
  const onDisk = new Map<string, Numbered>();
  let isReading = '';
  let isOwed = false;
  const bringBack = async (work: ShelfWork): Promise<void> => {
    const [origin, { sheet }] = [store.origin(), store.model()];
    isReading = work.id;
    try {
      const found = await database.steps(work.id);
      const trail = readSteps(found, work.steps, sheet, origin.file.sheet);
      if (trail !== undefined && store.bringBack(sheet, trail)) {
        const { past, future, at } = trail;
        // Steps that waited as the page was left are written anew with the rest.
        if (work.steps?.waiting === undefined)
          onDisk.set(work.id, { first: at - past.length, sheets: [...past, sheet, ...future] });
      }
    } finally {
      isReading = '';
      if (isOwed) again();
      isOwed = false;
    }
  };
  return {
    bringBack,
    writing: ({ id }, isLeft = false) => {
      if (isReading === id) {
        isOwed = true;
        return undefined;
      }
      const { past, future } = store.trail();
      const now = store.model().sheet;
      const { sheets, at } = keptPart(past, now, future);
      const [numbered, put] = writingOf(id, onDisk.get(id), sheets);
      if (!isLeft) onDisk.set(id, numbered);
      const { first } = numbered;
      const latest = (i: number): StepRecord[] =>
        i < 1 ? [] : [{ version: 1, id, number: first + i, step: stepTo(sheets[i]!, sheets[i - 1]!).step }];
      const waiting = isLeft ? [...put, ...latest(at - 1), ...latest(at)] : undefined;
      const mark = { at: first + at, sum: sheetSum(now), ...(waiting && { waiting }) };
      return { mark, put, stay: [first + 1, first + sheets.length - 1] };
    },
    failed: () => onDisk.clear(),
  };
}
