import type { Locator, Page } from '@playwright/test';
import { openApp } from './page';
import { expect, test } from './quietPage';

/** Where typing starts: the first keystrokes, while the browser is still compiling what they run, are told apart. */
const first = '12.5';
const within = ['10.5', '11.5', '13.5', '14.5', '15.5'];
/** Outside the input's range, where a message moves as well. */
const outside = '17.5';

/** A keystroke, and a loop that does the same each time and needs nothing of the page. */
interface Timed {
  /** Milliseconds that the page's thread works from the key until what it changed is laid out and painted. */
  readonly work: number;
  /** Milliseconds of the loop just after. */
  readonly loop: number;
}

/** Runs in the page: from now on times each key that is pressed. What a key and its frame wait for is left out. */
function timeKeys(): void {
  // Runs before other work that waits: as soon as the key's task is over, as soon as the frame is painted.
  const soon = (): Promise<number> => scheduler.postTask(() => performance.now(), { priority: 'user-blocking' });
  const loop = (rounds: number): number => {
    let last = 1;
    for (let i = 0; i < rounds; i += 1) last = (Math.imul(last, 31) + i) | 0;
    return last;
  };
  const timedLoop = (): number => {
    const start = performance.now();
    loop(3e6);
    return performance.now() - start;
  };
  // Often enough for the browser to compile it.
  for (let i = 0; i < 200; i += 1) loop(1e5);
  const found: Timed[] = [];
  Object.assign(globalThis, { timedKeys: found });
  const onKey = async (): Promise<void> => {
    const pressed = performance.now();
    const keyOver = soon();
    const frame = await new Promise<number>((begins) => {
      requestAnimationFrame(() => begins(performance.now()));
    });
    const [over, painted] = await Promise.all([keyOver, soon()]);
    // A frame that follows at once comes before the task that tells that the key's is over: there was no wait then.
    const work = over <= frame ? over - pressed + painted - frame : painted - pressed;
    found.push({ work, loop: timedLoop() });
  };
  addEventListener('keydown', () => void onKey(), { capture: true });
}

/** Types into a field that begins with `start`: its last digit is taken away, another one set, and so on. */
async function typeKeys(page: Page, field: Locator, start: string, count: number): Promise<Timed[]> {
  await field.fill(start);
  await page.waitForTimeout(300);
  for (let i = 0; i < count; i += 1) {
    await page.keyboard.press(i % 2 === 0 ? 'Backspace' : String(1 + (i % 9)));
    await page.waitForTimeout(60);
  }
  return page.evaluate(() => (globalThis as unknown as { timedKeys: Timed[] }).timedKeys.splice(0));
}

function quantile(times: readonly number[], share: number): number {
  return [...times].sort((a, b) => a - b)[Math.floor(share * times.length)] ?? NaN;
}

function spread(times: readonly number[]): string {
  const [median, high] = [quantile(times, 0.5), quantile(times, 0.95)].map((time) => time.toFixed(1));
  return `median ${median} ms, 95th percentile ${high} ms`;
}

/** All, and those beside which the loop ran as it does when nobody else wants the machine. */
function told(found: readonly Timed[]): string {
  const loops = found.map(({ loop }) => loop);
  const quiet = found.filter(({ loop }) => loop <= 1.5 * quantile(loops, 0.2));
  const works = (those: readonly Timed[]): string => spread(those.map(({ work }) => work));
  const undisturbed = `${quiet.length} of ${found.length} with the machine undisturbed: ${works(quiet)}`;
  return `${works(found)} (${undisturbed}; the loop: ${spread(loops)})`;
}

test('a keystroke moves headlines, rows and the chart; how soon they are drawn is told', async ({ page }, info) => {
  test.slow();
  await openApp(page);
  await expect(page.getByText('Drawing')).toHaveCount(0);
  const field = page.getByRole('textbox', { name: /^Move a plant/ });
  await field.focus();
  const before = await page.locator('.headlines').innerText();
  await page.evaluate(timeKeys);
  const early = await typeKeys(page, field, first, 20);
  const usual: Timed[] = [];
  for (const start of within) usual.push(...(await typeKeys(page, field, start, 48)));
  const beyond = await typeKeys(page, field, outside, 60);
  const report = [
    `a keystroke, typed, of 16.7 ms: ${told(usual)}`,
    `the first ${early.length}: ${told(early)}`,
    `outside the range: ${told(beyond)}`,
  ].join('\n');
  info.annotations.push({ type: 'speed', description: report });
  console.log(report);
  expect(await page.locator('.headlines').innerText()).not.toBe(before);
});

/** Runs in the page: puts a number of models on the shelf, each with a file of its own of 20 kB. */
function fillShelf(count: number): Promise<void> {
  return new Promise((done, fail) => {
    const opening = indexedDB.open('raftmargin shelf');
    opening.onerror = () => fail(opening.error ?? new Error('not opened'));
    opening.onsuccess = () => {
      const transaction = opening.result.transaction(['files', 'works'], 'readwrite');
      for (let i = 0; i < count; i += 1) {
        const head = { version: 2, id: `farm ${i}`, name: `farm ${i}.csv`, shipped: '' };
        const changes = Array.from({ length: 40 }, (_, row) => [row + 2, 'formula', String(i)]);
        const work = { title: `Farm ${i}`, size: 20_000, isCopy: false, changes, drafts: [], choice: {}, at: i };
        transaction.objectStore('works').put({ ...head, ...work }, head.id);
        transaction.objectStore('files').put({ ...head, opened: i, bytes: new Uint8Array(20_000) }, head.id);
      }
      transaction.oncomplete = () => {
        opening.result.close();
        done();
      };
    };
  });
}

test('a shelf of 200 models is listed; how soon is told', async ({ page }, info) => {
  await openApp(page);
  await page.evaluate(fillShelf, 200);
  const times: number[] = [];
  for (let i = 0; i < 6; i += 1) {
    const time = await page.evaluate(async () => {
      const start = performance.now();
      document.querySelector<HTMLElement>('.shelf > summary')?.click();
      while (document.querySelectorAll('.shelf-entries > li').length < 200) {
        await new Promise((go) => requestAnimationFrame(go));
      }
      await new Promise((go) => requestAnimationFrame(() => setTimeout(go)));
      return performance.now() - start;
    });
    times.push(time);
    await page.locator('.shelf > summary').click();
    await expect(page.locator('.shelf-entries > li')).toHaveCount(0);
  }
  const [first = NaN, ...later] = times;
  const report = `200 models: first ${first.toFixed(0)} ms with the part loaded, later ${quantile(later, 0.5).toFixed(0)} ms`;
  info.annotations.push({ type: 'speed', description: report });
  console.log(report);
});
