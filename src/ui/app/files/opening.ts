import type { Problem } from '../../../core/problem';
import { within, type Steps } from '../../../core/steps';
import { sizeProblem } from '../../../files/decodeText';
import { readModelInSteps } from '../../../files/readModel';
import type { SharedFile } from '../../../files/sharedFile';
import { beginSlice, nextTurn } from '../turns/slice';
import { snapshotInSteps, type Snapshot } from '../store/snapshot';
import type { ShippedModel } from './shippedModels';

/** A file read into a model with its values, or why it cannot be. */
export type Opened = Snapshot | { readonly name: string; readonly refusal: Problem };

/** Milliseconds of work after which the page gets a turn: more than where it is drawn, as each turn takes time. */
const slice = 10;

async function doneWithPauses<T>(steps: Steps<T>, onShare?: (share: number) => void, stop?: AbortSignal): Promise<T> {
  let isOver = beginSlice(slice);
  for (;;) {
    const step = steps.next();
    if (step.done === true) return step.value;
    if (!isOver()) continue;
    onShare?.(step.value);
    await nextTurn();
    stop?.throwIfAborted();
    isOver = beginSlice(slice);
  }
}

/** Approximate share of the time that reading takes; computing takes the rest. */
const reading = 0.8;

/** The sign with which a page begins, and no table. */
const lessThan = 0x3c;

function* openInSteps({ name, bytes }: SharedFile, shipped = ''): Steps<Opened> {
  const { model, file, refused } = yield* within(0, reading, readModelInSteps(bytes));
  const [refusal] = model.faults;
  if (refused && refusal !== undefined) return { name, refusal };
  const origin = { name, shipped, opened: Date.now(), bytes, file };
  return yield* within(reading, 1, snapshotInSteps(model, origin));
}

/**
 * Reads and computes a file while the page stays responsive.
 * @param onShare is called with the share done so far, 0 to 1
 * @param stop rejects the promise with its reason
 */
export async function openFile(file: File, onShare: (share: number) => void, stop: AbortSignal): Promise<Opened> {
  const tooLarge = sizeProblem(file.size);
  if (tooLarge !== undefined) return { name: file.name, refusal: tooLarge };
  const bytes = new Uint8Array(await file.arrayBuffer());
  const given = { name: file.name, bytes };
  const isPage = bytes.find((byte) => byte > 0x20) === lessThan;
  const found = isPage ? (await import('./modelInPage')).modelInPage(given) : given;
  if ('problem' in found) return { name: file.name, refusal: found.problem };
  return doneWithPauses(openInSteps(found), onShare, stop);
}

/** A shipped model, unchanged. */
export async function openShipped({ key, load }: ShippedModel): Promise<Snapshot> {
  const bytes = new TextEncoder().encode(await load());
  const opened = await doneWithPauses(openInSteps({ name: `${key}.csv`, bytes }, key));
  if ('refusal' in opened) throw new Error(opened.refusal.message);
  return opened;
}
