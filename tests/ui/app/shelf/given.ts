import 'fake-indexeddb/auto';
import { openShelfDatabase, type ShelfDatabase } from '../../../../src/ui/app/shelf/database';
import type { ShelfFile, ShelfWork } from '../../../../src/ui/app/shelf/record';
import { nursery } from '../../../present/nursery';

let count = 0;

/** A database of its own in memory (the library fake-indexeddb, which follows the W3C's Indexed Database API 3.0). */
export function database(): ShelfDatabase {
  count += 1;
  return openShelfDatabase(`shelf ${count}`);
}

export function workOf(changes: ShelfWork['changes'] = [], more: Partial<ShelfWork> = {}): ShelfWork {
  const { name, bytes } = nursery().origin;
  const rest = { shipped: '', size: bytes.length, isCopy: false, drafts: [], choice: {}, at: 5 };
  return { version: 2, id: 'one', name, title: 'A nursery', ...rest, changes, ...more };
}

export function fileOf(id = 'one'): ShelfFile {
  const { name, opened, bytes } = nursery().origin;
  return { version: 2, id, name, shipped: '', opened, bytes };
}
