import { readModel } from '../../../files/readModel';
import type { Sheet } from '../../../model/sheet';
import { whatChanged } from '../../../present/page/versionTexts';
import { withChanges } from './changes';
import type { ShelfDatabase } from './database';
import { isShelfFile, isShelfWork, type ShelfVersion } from './record';
import { addVersionOf, isShelfVersion } from './versions';

/** A state to which a model can go back. */
export type State = Pick<ShelfVersion, 'changes' | 'layout' | 'title' | 'at'>;

/** A version with what changed since the one before; blank where that one is no longer kept. */
export interface ListedVersion {
  /** 0 for the file as it was opened. */
  readonly number: number;
  readonly state: State;
  readonly changed: string;
}

/** The versions of a model, the newest first, and at the end the file as it was opened. */
export async function listVersions(database: ShelfDatabase, id: string): Promise<ListedVersion[]> {
  const [{ file }, found] = await Promise.all([database.read(id), database.versions(id)]);
  if (!isShelfFile(file)) return [];
  const { model } = readModel(file.bytes);
  const { sheet: from, title } = model;
  const states = found.filter(isShelfVersion).map((state) => ({ state, sheet: withChanges(from, state) }));
  const before = (i: number): Sheet | undefined =>
    states[i + 1]?.sheet ?? (states[i]?.state.number === 1 ? from : undefined);
  const listed = states.map(({ state, sheet }, i) => {
    const old = before(i);
    return { number: state.number, state, changed: old === undefined ? '' : whatChanged(old, sheet) };
  });
  return [...listed, { number: 0, state: { changes: [], title, at: file.opened }, changed: '' }];
}

/** Puts a state in the place of a model that no page has open; what the model is now becomes a version first. */
export async function goBackOnShelf(database: ShelfDatabase, id: string, state: State): Promise<void> {
  const { work } = await database.read(id);
  if (!isShelfWork(work)) return;
  await addVersionOf(database, work);
  const { changes, layout, title } = state;
  const version = layout === undefined ? 2 : 3;
  // The kept steps lead to what the model was.
  await database.write({ ...work, version, changes, layout, title, steps: undefined, at: Date.now() }, undefined);
}
