import type { ShelfDatabase } from './database';
import type { Keeper } from './keeper';

/**
 * Deletes a model from the shelf.
 * @param next id of the model that is opened where the deleted one is open on this page
 */
export async function deleteModel(database: ShelfDatabase, keeper: Keeper, id: string, next: string): Promise<void> {
  const isHere = id === keeper.id();
  const goOn = isHere ? keeper.stop() : undefined;
  try {
    await database.remove(id);
  } catch (reason) {
    goOn?.();
    throw reason;
  }
  keeper.removed(id);
  if (isHere) keeper.open(next);
}
