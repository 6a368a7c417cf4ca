import type { KeptChoice } from '../preferences/choice';
import type { Drafts } from '../store/drafts';
import type { ModelStore } from '../store/modelStore';
import { changesOf, layoutOf } from './changes';
import type { Entries } from './entries';
import { lockModel } from './modelLock';
import { isOwnWork, isSampleId, sampleId, type ShelfFile, type ShelfWork } from './record';

/** The parts of the page that are kept. */
export interface KeptParts {
  readonly store: ModelStore;
  readonly drafts: Drafts;
  readonly choice: KeptChoice;
}

/** The current work under its id on the shelf; an unchanged shipped model has a fixed id and no entry. */
export function workNow({ store, drafts, choice }: KeptParts, entries: Entries): ShelfWork {
  const { name, shipped, bytes, file } = store.origin();
  const { sheet, title } = store.model();
  const { id, isCopy, isOnShelf } = entries.now();
  const layout = layoutOf(file.sheet, sheet);
  const kept = { changes: changesOf(file.sheet, sheet), layout, drafts: drafts.all(), choice: choice.kept() };
  const isLoose = shipped !== '' && !isOnShelf && !isOwnWork(kept);
  const version = layout === undefined ? 2 : 3;
  const head = { version, id: isLoose ? sampleId(shipped) : id, name, title, shipped } as const;
  return { ...head, size: bytes.length, isCopy, ...kept, at: Date.now() };
}

/** The file of the model now open, where the database has not confirmed that it has it. */
export function unconfirmedFile({ store }: KeptParts, entries: Entries, id: string): ShelfFile | undefined {
  if (isSampleId(id) || entries.now().isConfirmed) return undefined;
  const { name, shipped, opened, bytes } = store.origin();
  return { version: 2, id, name, shipped, opened, bytes };
}

/** The file of the model now open where the database lacks it; it is then marked as on its way there. */
export function newFile(parts: KeptParts, entries: Entries, id: string): ShelfFile | undefined {
  const entry = entries.now();
  if (isSampleId(id) || entry.isOnShelf) return undefined;
  entry.lock ??= lockModel(id);
  entry.isOnShelf = true;
  return unconfirmedFile(parts, entries, id);
}
