import { readModel } from '../../../files/readModel';
import type { Sheet } from '../../../model/sheet';
import { whatChanged } from '../../../present/page/versionTexts';
import { withChanges } from './changes';
import type { ShelfDatabase } from './database';
import { isShelfFile, isShelfWork, type ShelfVersion } from './record';
import { addVersionOf, isShelfVersion, withOwnTexts } from './versions';

/** A state to which a model can go back. */
export type State = Pick<ShelfVersion, 'changes' | 'layout' | 'own' | 'title' | 'at'>;

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
  const first = { sheet: from, state: { own: {} } };
  const before = (i: number): { sheet: Sheet; state: Pick<State, 'own'> } | undefined =>
    states[i + 1] ?? (states[i]?.state.number === 1 ? first : undefined);
  const listed = states.map(({ state, sheet }, i) => {
    const old = before(i);
    return {
      number: state.number,
      state,
      changed: old === undefined ? '' : whatChanged(old.sheet, sheet, old.state.own, state.own),
    };
  });
  return [...listed, { number: 0, state: { changes: [], title, at: file.opened }, changed: '' }];
}

/**
 * Puts a state in the place of a model that no page has open; what the model is now becomes a version first.
 * @param withWords whether the words of its case and its timed batches go back as well
 */
export async function goBackOnShelf(
  database: ShelfDatabase,
  id: string,
  state: State,
  withWords: boolean,
): Promise<void> {
  const { work } = await database.read(id);
  if (!isShelfWork(work)) return;
  await addVersionOf(database, work);
  const { changes, layout, title, own = {} } = state;
  const choice = withWords ? withOwnTexts(work.choice, own) : work.choice;
  const version = layout === undefined ? 2 : 3;
  // The kept steps lead to what the model was.
  await database.write(
    { ...work, version, changes, layout, title, choice, steps: undefined, at: Date.now() },
    undefined,
  );
}
