import { openApp } from './page';
import { expect, test } from './quietPage';

const keystrokes = 240;
/** And outside the input's range, where a message moves as well. */
const outside = 60;
/** The first keystrokes, while the browser is still compiling what they run, are told apart. */
const first = 20;

/** A frame that shows a keystroke, and a loop that does the same each time and needs nothing of the page. */
interface Timed {
  /** Milliseconds from the keystroke until the frame is laid out and painted. */
  readonly frame: number;
  /** Milliseconds of the loop just before and just after. */
  readonly before: number;
  readonly after: number;
}

/**
 * Runs in the page: keystrokes in the field that has the focus. Each comes where a frame begins: what a frame has to do
 * is timed, not the wait for one. Before and after it a fixed loop is timed too: how much its times differ is the
 * machine's own doing, and no frame is steadier than that.
 */
async function timeKeystrokes([from, count]: readonly [from: number, count: number]): Promise<Timed[]> {
  const field = document.activeElement as HTMLInputElement;
  const rest = (ms: number): Promise<unknown> => new Promise((over) => setTimeout(over, ms));
  const frame = (): Promise<unknown> => new Promise((begins) => requestAnimationFrame(begins));
  // Runs before other work that waits, as soon as the frame is painted.
  const painted = (): Promise<void> => scheduler.postTask(() => undefined, { priority: 'user-blocking' });
  const loop = (rounds: number): number => {
    let last = 1;
    for (let i = 0; i < rounds; i += 1) last = (Math.imul(last, 31) + i) | 0;
    return last;
  };
  const timed = (): number => {
    const start = performance.now();
    loop(3e6);
    return performance.now() - start;
  };
  // Often enough for the browser to compile it.
  for (let i = 0; i < 200; i += 1) loop(1e5);
  const found: Timed[] = [];
  for (let i = 0; i < count; i += 1) {
    await rest(30);
    const before = timed();
    await rest(0);
    await frame();
    const start = performance.now();
    field.value = (from + (i % 60) / 10).toFixed(1);
    field.dispatchEvent(new InputEvent('input', { bubbles: true }));
    await painted();
    const taken = performance.now() - start;
    found.push({ frame: taken, before, after: timed() });
    await rest(30);
  }
  return found;
}

function quantile(times: readonly number[], share: number): number {
  return [...times].sort((a, b) => a - b)[Math.floor(share * times.length)] ?? NaN;
}

function spread(times: readonly number[]): string {
  const [median, high] = [quantile(times, 0.5), quantile(times, 0.95)].map((time) => time.toFixed(1));
  return `median ${median} ms, 95th percentile ${high} ms`;
}

function loopsOf(found: readonly Timed[]): number[] {
  return found.flatMap(({ before, after }) => [before, after]);
}

/** Those beside which the loop ran as it does when nobody else wants the machine. */
function undisturbed(found: readonly Timed[]): Timed[] {
  const usual = quantile(loopsOf(found), 0.2);
  return found.filter(({ before, after }) => Math.max(before, after) <= 1.5 * usual);
}

function told(found: readonly Timed[]): string {
  const quiet = undisturbed(found);
  return (
    `${spread(found.map(({ frame }) => frame))} (${quiet.length} of ${found.length} with the machine undisturbed: ` +
    `${spread(quiet.map(({ frame }) => frame))}; the loop: ${spread(loopsOf(found))})`
  );
}

test('a keystroke moves headlines, rows and the chart; how soon they are drawn is told', async ({ page }, info) => {
  test.slow();
  await openApp(page);
  await expect(page.getByText('Drawing')).toHaveCount(0);
  await page.getByRole('textbox', { name: /^Move a plant/ }).focus();
  const before = await page.locator('.headlines').innerText();
  const within = await page.evaluate(timeKeystrokes, [10, keystrokes] as const);
  const beyond = await page.evaluate(timeKeystrokes, [17, outside] as const);
  const report = [
    `a frame with a keystroke, of 16.7 ms: ${told(within.slice(first))}`,
    `the first ${first}: ${told(within.slice(0, first))}`,
    `outside the range: ${told(beyond)}`,
  ].join('\n');
  info.annotations.push({ type: 'speed', description: report });
  console.log(report);
  expect(await page.locator('.headlines').innerText()).not.toBe(before);
});
