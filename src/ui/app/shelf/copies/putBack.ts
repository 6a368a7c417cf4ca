import { copyTexts } from '../../../../present/page/copyTexts';
import type { ShelfDatabase } from '../database';
import { readCopies, type CopyStorage } from './copyStorage';

/**
 * Puts the models of the second copies back into a database that the browser has lost.
 * @returns what is to be said of it; blank where there was no whole copy
 */
export async function putBack(database: ShelfDatabase, storage: CopyStorage): Promise<string> {
  const models = await readCopies(storage);
  if (models.length === 0) return '';
  await database.putBack(models);
  return copyTexts.putBack(models.length);
}
