import { expect, test } from 'vitest';
import { openFile } from '../../../../src/ui/app/files/opening';
import { importFiles } from '../../../../src/ui/app/shelf/importFiles';
import type { ShelfWork } from '../../../../src/ui/app/shelf/record';
import { text } from '../../../present/nursery';
import { database } from './given';

const read = (file: File) => openFile(file, () => undefined, new AbortController().signal);
const farm = (name: string): File => new File([text], name);

test('each file that can be read gets its place, the last is left to be opened, and faults are told by file', async () => {
  const shelf = database();
  const bad = new File([new Uint8Array([0x50, 0x4b, 3, 4, 0, 0])], 'sheet.xlsx');
  const { last, others, refused } = await importFiles(shelf, [farm('a.csv'), bad, farm('b.csv'), farm('c.csv')], read);
  expect([last?.origin.name, others]).toEqual(['c.csv', 2]);
  expect(refused).toEqual([expect.stringMatching(/^sheet\.xlsx: ./)]);
  expect([...(await shelf.list()).values()].map((work) => (work as ShelfWork).name).sort()).toEqual(['a.csv', 'b.csv']);
});

test('a shelf that takes none says so for each file', async () => {
  const broken = { ...database(), write: () => Promise.reject(new DOMException('', 'QuotaExceededError')) };
  const { others, refused } = await importFiles(broken, [farm('a.csv'), farm('b.csv')], read);
  expect(others).toBe(0);
  expect(refused).toEqual([expect.stringMatching(/^a\.csv: the browser allows this page no more room on the disk/)]);
});
