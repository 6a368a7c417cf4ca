import { readFileSync } from 'node:fs';
import { afterEach, beforeEach, expect, test, vi } from 'vitest';
import { begin, type Kept } from '../../../../src/ui/app/shelf/beginning';
import type { PageMemory } from '../../../../src/ui/app/shelf/pageMemory';
import { database, fileOf, workOf } from './given';

const hire = readFileSync('models/transplant-hire.csv', 'utf8');
const fetched = vi.fn(() => Promise.resolve(new Response(hire)));

beforeEach(() => {
  vi.stubGlobal('fetch', fetched);
  // A browser without Web Locks.
  vi.stubGlobal('navigator', {});
});
afterEach(() => {
  vi.unstubAllGlobals();
  fetched.mockClear();
});

/** The short texts of a browser that was here, or was not. */
function memory(wasHere: boolean): PageMemory {
  const none = (): undefined => undefined;
  return {
    model: none,
    setModel: none,
    isMoved: () => wasHere,
    setMoved: none,
    lastMoment: none,
    setLastMoment: () => true,
  };
}

function kept(more: Partial<Kept> = {}): Kept {
  return {
    database: database(),
    memory: memory(false),
    putBack: () => Promise.resolve(''),
    moveOldWork: () => Promise.resolve(),
    ...more,
  };
}

test('a browser that was never here asks for the sample while its storage is read, and opens it, once', async () => {
  let read = (): void => undefined;
  const reading = new Promise<void>((done) => (read = done));
  const beginning = begin(kept({ moveOldWork: () => reading }));
  expect(fetched).toHaveBeenCalledTimes(1);
  read();
  expect(await beginning).toMatchObject({ origin: { shipped: 'transplant-hire' }, work: undefined, failure: '' });
  expect(fetched).toHaveBeenCalledTimes(1);
});

test('work that an earlier version kept is opened, whatever was asked for meanwhile', async () => {
  const shelf = database();
  const moving = async (): Promise<void> => {
    await shelf.write(workOf([[3, 'formula', '15']]), fileOf());
  };
  const { work, origin } = await begin(kept({ database: shelf, moveOldWork: moving }));
  expect([work?.id, origin.shipped]).toEqual(['one', '']);
});

test('a browser that was here opens its work and asks for no sample', async () => {
  const shelf = database();
  await shelf.write(workOf(), fileOf());
  expect(await begin(kept({ database: shelf, memory: memory(true) }))).toMatchObject({
    work: { id: 'one' },
    failure: '',
  });
  expect(fetched).not.toHaveBeenCalled();
});

test('a model that the database lacks is opened as its page left it, and is known to be unwritten', async () => {
  const left = { ...workOf([[3, 'formula', '15']]), file: { ...fileOf(), bytes: [...fileOf().bytes] } };
  const remembered = { ...memory(true), model: () => 'one', lastMoment: () => JSON.stringify(left) };
  const beginning = await begin(kept({ memory: remembered }));
  expect(beginning).toMatchObject({ work: { id: 'one' }, isUnwritten: true, failure: '' });
  expect(beginning.origin.bytes).toEqual(fileOf().bytes);
  expect(fetched).not.toHaveBeenCalled();
});

test('one that the database has is opened from there, whatever file the memory holds', async () => {
  const shelf = database();
  await shelf.write(workOf([], { at: 9 }), fileOf());
  const left = { ...workOf(), file: { ...fileOf(), name: 'other.csv', bytes: [1] } };
  const remembered = { ...memory(true), model: () => 'one', lastMoment: () => JSON.stringify(left) };
  const beginning = await begin(kept({ database: shelf, memory: remembered }));
  expect(beginning).toMatchObject({ work: { at: 9 }, isUnwritten: false, origin: { name: fileOf().name } });
});

test('a sample that cannot be had is told, not thrown past its reader', async () => {
  fetched.mockImplementation(() => Promise.resolve(new Response('', { status: 404, statusText: 'Not Found' })));
  await expect(begin(kept())).rejects.toThrow('404 Not Found');
});

test('models that were put back are opened, and it is said', async () => {
  const shelf = database();
  const putBack = async (): Promise<string> => {
    await shelf.write(workOf(), fileOf());
    return 'They are back.';
  };
  const beginning = await begin(kept({ database: shelf, memory: memory(true), putBack }));
  expect(beginning).toMatchObject({ work: { id: 'one' }, news: 'They are back.' });
});
