import type { BrowserContext } from '@playwright/test';
import { writeTable } from '../../src/files/writeTable';
import { reopen } from '../../src/ui/app/shelf/changes';
import { isShelfFile, isShelfWork, type ShelfWork } from '../../src/ui/app/shelf/record';
import { isShelfVersion } from '../../src/ui/app/shelf/versions';

/** The stores of the database as the page gives them, a file's bytes as a list of numbers. */
interface Stores {
  readonly files: readonly (readonly [string, Record<string, unknown>])[];
  readonly works: readonly (readonly [string, unknown])[];
  readonly versions: readonly unknown[];
}

/** Runs in a page of the site that does not start the app. */
function readStores(): Promise<Stores> {
  return new Promise((give, fail) => {
    const opening = indexedDB.open('raftmargin shelf');
    opening.onerror = () => fail(opening.error ?? new Error('not opened'));
    opening.onupgradeneeded = () => opening.transaction?.abort();
    opening.onsuccess = () => {
      const names = ['files', 'works', 'versions'];
      const transaction = opening.result.transaction(names);
      const asked = names.map((name) => {
        const store = transaction.objectStore(name);
        return { keys: store.getAllKeys(), values: store.getAll() };
      });
      transaction.oncomplete = () => {
        opening.result.close();
        const [files = [], works = [], versions = []] = asked.map(({ keys, values }) =>
          keys.result.map((key, i) => [key as string, values.result[i] as Record<string, unknown>] as const),
        );
        const listed = files.map(
          ([key, file]) => [key, { ...file, bytes: [...(file['bytes'] as Uint8Array)] }] as const,
        );
        give({ files: listed, works, versions: versions.map(([, value]) => value) });
      };
    };
  });
}

/** A model as it stands on the disk. */
interface OnDisk {
  readonly work: ShelfWork;
  readonly wage: string;
  readonly title: string;
}

/** What is on the disk: models by their file's name, and what is wrong with any record. */
export interface ShelfOnDisk {
  readonly models: ReadonlyMap<string, OnDisk>;
  readonly faults: readonly string[];
}

function opened(file: Record<string, unknown> | undefined, work: unknown): OnDisk | string {
  if (!isShelfWork(work)) return 'work that cannot be read';
  const whole = { ...file, bytes: new Uint8Array((file?.['bytes'] ?? []) as number[]) };
  if (file === undefined || !isShelfFile(whole)) return 'work without its file';
  const { model, origin } = reopen(whole, work);
  writeTable(origin.file, model.sheet);
  const wage = model.cells.find(({ name }) => name === 'wage');
  if (wage === undefined) return 'a model without its entries';
  const draft = work.drafts.find(([row, column]) => row === wage.row && column === 'formula');
  const row = model.sheet.rows.find((one) => one.row === wage.row);
  // A model without a title is shown under the name of its file.
  return { work, title: model.title || work.name, wage: draft?.[2] ?? row?.fields.get('formula') ?? '' };
}

/** Reads what is on the disk without the app. */
export async function readShelf(context: BrowserContext, address: string): Promise<ShelfOnDisk> {
  const page = await context.newPage();
  await page.route('**/nothing', (route) => route.fulfill({ contentType: 'text/html', body: 'nothing' }));
  await page.goto(`${address}/nothing`);
  const { files, works, versions } = await page.evaluate(readStores);
  await page.close();
  const byId = new Map(files);
  const faults: string[] = [];
  const models = new Map<string, OnDisk>();
  for (const [id, work] of works.filter(([id]) => !id.startsWith('sample '))) {
    const found = opened(byId.get(id), work);
    if (typeof found === 'string') faults.push(`${id}: ${found}`);
    else models.set(`${found.work.name}${found.work.isCopy ? ' (copy)' : ''}`, found);
  }
  const known = new Set(works.map(([id]) => id));
  faults.push(...files.filter(([id]) => !known.has(id)).map(([id]) => `${id}: a file without its work`));
  for (const version of versions) {
    if (!isShelfVersion(version)) faults.push('a version that cannot be read');
    else if (!byId.has(version.id)) faults.push(`${version.id}: a version without its model`);
  }
  return { models, faults };
}
