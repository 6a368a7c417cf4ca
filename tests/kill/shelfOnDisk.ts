import type { BrowserContext } from '@playwright/test';
import { writeTable } from '../../src/files/writeTable';
import { buildModel } from '../../src/model/buildModel';
import { reopen } from '../../src/ui/app/shelf/changes';
import { isShelfFile, isShelfWork, type ShelfWork } from '../../src/ui/app/shelf/record';
import { readSteps } from '../../src/ui/app/shelf/steps/readSteps';
import { isStepRecord } from '../../src/ui/app/shelf/steps/stepRecord';
import { isShelfVersion } from '../../src/ui/app/shelf/versions';

/** The stores of the database as the page gives them, a file's bytes as a list of numbers. */
interface Stores {
  /** Whether the browser had no database, as it has after it found its own damaged. */
  readonly isLost: boolean;
  readonly files: readonly (readonly [string, Record<string, unknown>])[];
  readonly works: readonly (readonly [string, unknown])[];
  readonly versions: readonly unknown[];
  readonly steps: readonly unknown[];
}

/** Runs in a page of the site that does not start the app. */
function readStores(): Promise<Stores> {
  return new Promise((give, fail) => {
    const opening = indexedDB.open('raftmargin shelf');
    let isLost = false;
    opening.onerror = () => {
      if (isLost) give({ isLost, files: [], works: [], versions: [], steps: [] });
      else fail(opening.error ?? new Error('not opened'));
    };
    opening.onupgradeneeded = () => {
      isLost = true;
      opening.transaction?.abort();
    };
    opening.onsuccess = () => {
      const names = ['files', 'works', 'versions', 'steps'];
      const transaction = opening.result.transaction(names);
      const asked = names.map((name) => {
        const store = transaction.objectStore(name);
        return { keys: store.getAllKeys(), values: store.getAll() };
      });
      transaction.oncomplete = () => {
        opening.result.close();
        const [files = [], works = [], versions = [], steps = []] = asked.map(({ keys, values }) =>
          keys.result.map((key, i) => [key as string, values.result[i] as Record<string, unknown>] as const),
        );
        const listed = files.map(
          ([key, file]) => [key, { ...file, bytes: [...(file['bytes'] as Uint8Array)] }] as const,
        );
        give({
          isLost,
          files: listed,
          works,
          versions: versions.map(([, value]) => value),
          steps: steps.map(([, value]) => value),
        });
      };
    };
  });
}

/** A model as it stands on the disk. */
interface OnDisk {
  readonly work: ShelfWork;
  readonly wage: string;
  readonly title: string;
  /** The wage and the title before the last step; undefined where no step was kept. */
  readonly before: { readonly wage: string; readonly title: string } | undefined;
}

/** What is on the disk: models by their file's name, and what is wrong with any record. */
export interface ShelfOnDisk {
  /** Whether the browser had no database. */
  readonly isLost: boolean;
  readonly models: ReadonlyMap<string, OnDisk>;
  readonly faults: readonly string[];
  /** The model that the app opens; undefined where that is a sample, or none can be read. */
  readonly newest: OnDisk | undefined;
}

function opened(file: Record<string, unknown> | undefined, work: unknown, steps: readonly unknown[]): OnDisk | string {
  if (!isShelfWork(work)) return 'work that cannot be read';
  const whole = { ...file, bytes: new Uint8Array((file?.['bytes'] ?? []) as number[]) };
  if (file === undefined || !isShelfFile(whole)) return 'work without its file';
  const { model, origin } = reopen(whole, work);
  writeTable(origin.file, model.sheet);
  const wage = model.cells.find(({ name }) => name === 'wage');
  if (wage === undefined) return 'a model without its entries';
  const draft = work.drafts.find(([row, column]) => row === wage.row && column === 'formula');
  const row = model.sheet.rows.find((one) => one.row === wage.row);
  const trail = readSteps(steps, work.steps, model.sheet, origin.file.sheet);
  if (work.steps !== undefined && steps.length > 0 && trail === undefined) return 'steps that do not fit their work';
  const last = trail?.past.at(-1);
  const old = last === undefined ? undefined : buildModel(last, model.reading);
  const oldWage = last?.rows.find((one) => one.row === wage.row)?.fields.get('formula') ?? '';
  // A model without a title is shown under the name of its file.
  return {
    work,
    title: model.title || work.name,
    wage: draft?.[2] ?? row?.fields.get('formula') ?? '',
    before: old && { wage: oldWage, title: old.title || work.name },
  };
}

/** Reads what is on the disk without the app. */
export async function readShelf(context: BrowserContext, address: string): Promise<ShelfOnDisk> {
  const page = await context.newPage();
  await page.route('**/nothing', (route) => route.fulfill({ contentType: 'text/html', body: 'nothing' }));
  await page.goto(`${address}/nothing`);
  const { isLost, files, works, versions, steps } = await page.evaluate(readStores);
  await page.close();
  const byId = new Map(files);
  const faults: string[] = [];
  const models = new Map<string, OnDisk>();
  for (const [id, work] of works.filter(([id]) => !id.startsWith('sample '))) {
    const own = steps.filter((step) => isStepRecord(step) && step.id === id);
    const found = opened(byId.get(id), work, own);
    if (typeof found === 'string') faults.push(`${id}: ${found}`);
    else models.set(`${found.work.name}${found.work.isCopy ? ' (copy)' : ''}`, found);
  }
  const known = new Set(works.map(([id]) => id));
  faults.push(...files.filter(([id]) => !known.has(id)).map(([id]) => `${id}: a file without its work`));
  for (const step of steps) {
    if (!isStepRecord(step)) faults.push('a step that cannot be read');
    else if (!byId.has(step.id)) faults.push(`${step.id}: a step without its model`);
  }
  for (const version of versions) {
    if (!isShelfVersion(version)) faults.push('a version that cannot be read');
    else if (!byId.has(version.id)) faults.push(`${version.id}: a version without its model`);
  }
  const [newest] = works
    .filter(([, work]) => isShelfWork(work))
    .sort(([, a], [, b]) => (b as ShelfWork).at - (a as ShelfWork).at);
  return { isLost, models, faults, newest: [...models.values()].find(({ work }) => work.id === newest?.[0]) };
}
