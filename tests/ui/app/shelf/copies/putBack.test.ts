import { expect, it } from 'vitest';
import { copyFile, copyVersion, copyWork } from '../../../../../src/ui/app/shelf/copies/copyStorage';
import { putBack } from '../../../../../src/ui/app/shelf/copies/putBack';
import type { ShelfVersion } from '../../../../../src/ui/app/shelf/record';
import { database, fileOf, workOf } from '../given';
import { GivenCache } from './givenCaches';

async function withCopy(cache: GivenCache, id: string, name = 'nursery.csv'): Promise<void> {
  await copyFile(cache.storage, { ...fileOf(id), name });
  await copyWork(cache.storage, workOf([[3, 'formula', '15']], { id, name }), 'a');
}

const version: ShelfVersion = { version: 1, id: 'one', number: 4, at: 3, title: 'A nursery', changes: [] };

it('puts each model back with its file and its versions, to the byte', async () => {
  const [cache, shelf] = [new GivenCache(), database()];
  await withCopy(cache, 'one', 'Semillero «nº 1» – ñandú.csv');
  await withCopy(cache, 'moved 3/4 %');
  await copyVersion(cache.storage, version, 0);
  expect(await putBack(shelf, cache.storage)).toContain('Your 2 models are back');
  expect((await shelf.read('one')).file).toEqual({ ...fileOf(), name: 'Semillero «nº 1» – ñandú.csv' });
  expect((await shelf.read('moved 3/4 %')).work).toMatchObject({ changes: [[3, 'formula', '15']] });
  expect(await shelf.versions('one')).toEqual([version]);
});

it('leaves what the database has as it is', async () => {
  const [cache, shelf] = [new GivenCache(), database()];
  await withCopy(cache, 'one');
  await shelf.write(workOf([[3, 'formula', '16']]), fileOf());
  await putBack(shelf, cache.storage);
  expect((await shelf.read('one')).work).toEqual(workOf([[3, 'formula', '16']]));
});

it.each([
  ['a file', 'file', 'PK'],
  ['work', 'work-a', '{"version":2'],
  ['a later version of the program', 'work-a', '{"version":9}'],
])('says nothing where %s cannot be read', async (_what, part, text) => {
  const [cache, shelf] = [new GivenCache(), database()];
  await withCopy(cache, 'one');
  for (const address of cache.held.keys()) if (address.endsWith(part)) cache.held.set(address, new Response(text));
  expect(await putBack(shelf, cache.storage)).toBe('');
  expect(await shelf.ids()).toEqual([]);
});
