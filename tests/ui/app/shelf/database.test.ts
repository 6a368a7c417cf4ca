import { openDB } from 'idb';
import { describe, expect, it } from 'vitest';
import { openShelfDatabase, readForeignStore } from '../../../../src/ui/app/shelf/database';
import { database, fileOf, workOf } from './given';

describe('the shelf’s database', () => {
  it('gives back what was written', async () => {
    const shelf = database();
    await shelf.write(workOf([[3, 'formula', '15']]), fileOf());
    expect(await shelf.read('one')).toEqual({ file: fileOf(), work: workOf([[3, 'formula', '15']]) });
  });
  it('keeps the file where only the work is written anew', async () => {
    const shelf = database();
    await shelf.write(workOf(), fileOf());
    await shelf.write(workOf([[3, 'formula', '16']]), undefined);
    expect((await shelf.read('one')).file).toEqual(fileOf());
  });
  it('tells where there is no file to the work', async () => {
    const shelf = database();
    expect(await shelf.write(workOf(), fileOf())).toBe(true);
    expect(await shelf.write(workOf(), undefined)).toBe(true);
    await shelf.remove('one');
    expect(await shelf.write(workOf(), undefined)).toBe(false);
  });
  it('lists all work by its id, also what it cannot understand', async () => {
    const shelf = database();
    await shelf.write(workOf(), fileOf());
    await shelf.setAside('odd', 'garbage');
    expect(await shelf.list()).toEqual(
      new Map<string, unknown>([
        ['odd', 'garbage'],
        ['one', workOf()],
      ]),
    );
  });
  it('never puts what is set aside in the place of something', async () => {
    const shelf = database();
    await shelf.write(workOf(), fileOf());
    await shelf.setAside('one', 'garbage');
    expect((await shelf.read('one')).work).toEqual(workOf());
  });
  it('removes a model and its file', async () => {
    const shelf = database();
    await shelf.write(workOf(), fileOf());
    await shelf.remove('one');
    expect(await shelf.read('one')).toEqual({ file: undefined, work: undefined });
  });
  it('keeps all that a database of the version before held', async () => {
    const before = await openDB('shelf of before', 1, {
      upgrade: (made) => {
        made.createObjectStore('files');
        made.createObjectStore('works');
      },
      blocking: () => before.close(),
    });
    await before.put('works', workOf([[3, 'formula', '15']]), 'one');
    await before.put('files', fileOf(), 'one');
    const shelf = openShelfDatabase('shelf of before');
    expect(await shelf.read('one')).toEqual({ file: fileOf(), work: workOf([[3, 'formula', '15']]) });
    expect(await shelf.versions('one')).toEqual([]);
  });
  it('says where a newer version of the program has the database', async () => {
    (await openDB('shelf of later', 9)).close();
    const shelf = openShelfDatabase('shelf of later');
    await expect(shelf.list()).rejects.toThrow(/^a newer version of this program is open/);
  });
  it('makes no database where it looks for another one in vain', async () => {
    expect(await readForeignStore('nobody’s', 'kept')).toEqual(new Map());
    expect((await indexedDB.databases()).map(({ name }) => name)).not.toContain('nobody’s');
  });
});
