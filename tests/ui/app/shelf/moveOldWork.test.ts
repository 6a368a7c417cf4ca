import { openDB } from 'idb';
import { expect, test } from 'vitest';
import { readForeignStore } from '../../../../src/ui/app/shelf/database';
import { moveOldWork } from '../../../../src/ui/app/shelf/moveOldWork';
import { isShelfFile, isShelfWork } from '../../../../src/ui/app/shelf/record';
import { nursery } from '../../../present/nursery';
import { database } from './given';

test('what the version before kept of its tabs stands on the shelf, the newest once, and garbage is set aside', async () => {
  const { name, shipped, opened, bytes } = nursery().origin;
  const tab = (at: number, text: string) => ({
    version: 1,
    name,
    shipped,
    opened,
    bytes,
    changes: [[3, 'formula', text]],
    drafts: [[4, 'formula', 'dear']],
    choice: { result: 'margin' },
    at,
  });
  const old = await openDB('raftmargin', 1, { upgrade: (made) => void made.createObjectStore('kept') });
  await old.put('kept', tab(10, '15'), 'session of a');
  await old.put('kept', tab(20, '16'), 'session of b');
  await old.put('kept', tab(20, '16'), 'session');
  await old.put('kept', { ...tab(30, '17'), version: 7 }, 'session of c');
  const shelf = database();
  for (let times = 0; times < 2; times++) await moveOldWork(shelf, await readForeignStore('raftmargin', 'kept'));
  const all = await shelf.list();
  const works = [...all.values()].filter(isShelfWork);
  expect(works.map(({ at, changes }) => [at, changes]).sort()).toEqual([
    [10, [[3, 'formula', '15']]],
    [20, [[3, 'formula', '16']]],
  ]);
  expect(works[0]).toMatchObject({ drafts: [[4, 'formula', 'dear']], choice: { result: 'margin' }, name });
  expect(isShelfFile((await shelf.read(works[0]!.id)).file)).toBe(true);
  expect(all.get('set aside session of c')).toMatchObject({ version: 7 });
  expect(await old.count('kept')).toBe(4);
});
