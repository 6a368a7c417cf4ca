import type { Problem } from '../core/problem';
import { sizeProblem } from '../files/decodeText';
import { readModel, readModelInSlices, type OpenedModel } from '../files/readModel';
import type { Model } from '../model/model';
import type { Origin } from './moment';
import type { ShippedModel } from './shippedModels';

/** A file read into a model, or why it is none. */
export type Opened =
  | { readonly model: Model; readonly origin: Origin }
  | { readonly name: string; readonly refusal: Problem };

/** Milliseconds of reading after which the page is given the turn. */
const slice = 12;

const nextTurn = (): Promise<void> => new Promise((go) => setTimeout(go));

async function readWithPauses(
  bytes: Uint8Array, onShare: (share: number) => void, stop: AbortSignal,
): Promise<OpenedModel> {
  const steps = readModelInSlices(bytes);
  let since = performance.now();
  for (;;) {
    const step = steps.next();
    if (step.done === true) return step.value;
    // The last step checks the model, which takes a while: the page shows that first.
    if (step.value < 1 && performance.now() - since < slice) continue;
    onShare(step.value);
    await nextTurn();
    stop.throwIfAborted();
    since = performance.now();
  }
}

/**
 * Reads a person's file while the page stays awake.
 * @param onShare is told the share read so far, 0 to 1
 * @param stop rejects the promise with its reason
 */
export async function openFile(file: File, onShare: (share: number) => void, stop: AbortSignal): Promise<Opened> {
  const tooLarge = sizeProblem(file.size);
  if (tooLarge !== undefined) return { name: file.name, refusal: tooLarge };
  const bytes = new Uint8Array(await file.arrayBuffer());
  const { model, file: read, refused } = await readWithPauses(bytes, onShare, stop);
  const [refusal] = model.faults;
  if (refused && refusal !== undefined) return { name: file.name, refusal };
  return { model, origin: { name: file.name, shipped: '', opened: Date.now(), bytes, file: read } };
}

/** A shipped model as it comes. */
export async function openShipped({ key, load }: ShippedModel): Promise<{ model: Model; origin: Origin }> {
  const bytes = new TextEncoder().encode(await load());
  const { model, file } = readModel(bytes);
  return { model, origin: { name: `${key}.csv`, shipped: key, opened: Date.now(), bytes, file } };
}
