import { openApp } from './page';
import { expect, test } from './quietPage';

const keystrokes = 160;
/** And outside the input's range, where a message moves as well. */
const outside = 60;
/** The first keystrokes, while the browser is still compiling what they run, are told apart. */
const first = 20;

interface Times {
  /** Milliseconds from a keystroke until the frame that shows it is laid out and painted. */
  readonly frames: readonly number[];
  /** Milliseconds of a loop that does the same each time and needs nothing of the page. */
  readonly loops: readonly number[];
}

/**
 * Runs in the page: keystrokes in the field that has the focus. Each comes where a frame begins: what a frame has to do
 * is timed, not the wait for one. Between keystrokes a fixed loop is timed too: how much its times differ is the
 * machine's own doing, and no frame is steadier than that.
 */
async function timeKeystrokes([from, count]: readonly [from: number, count: number]): Promise<Times> {
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
  const timed = async (work: () => unknown): Promise<number> => {
    const start = performance.now();
    await work();
    return performance.now() - start;
  };
  // Often enough for the browser to compile it.
  for (let i = 0; i < 200; i += 1) loop(1e5);
  const loops: number[] = [];
  const frames: number[] = [];
  for (let i = 0; i < count; i += 1) {
    await rest(30);
    loops.push(await timed(() => loop(5e6)));
    await rest(30);
    await frame();
    frames.push(
      await timed(() => {
        field.value = (from + (i % 60) / 10).toFixed(1);
        field.dispatchEvent(new InputEvent('input', { bubbles: true }));
        return painted();
      }),
    );
  }
  return { frames, loops };
}

function spread(times: readonly number[]): string {
  const sorted = [...times].sort((a, b) => a - b);
  const at = (share: number): string => sorted[Math.floor(share * sorted.length)]!.toFixed(1);
  return `median ${at(0.5)} ms, 95th percentile ${at(0.95)} ms`;
}

test('a keystroke moves headlines, rows and the chart; how soon they are drawn is told', async ({ page }, info) => {
  await openApp(page);
  await expect(page.getByText('Drawing')).toHaveCount(0);
  await page.getByRole('textbox', { name: /^Move a plant/ }).focus();
  const before = await page.locator('.headlines').innerText();
  const { frames, loops } = await page.evaluate(timeKeystrokes, [10, keystrokes] as const);
  const beyond = await page.evaluate(timeKeystrokes, [17, outside] as const);
  const told =
    `a frame with a keystroke: ${spread(frames.slice(first))}; the first ${first}: ${spread(frames.slice(0, first))};` +
    ` outside the range: ${spread(beyond.frames)} (one frame is 16.7 ms); a fixed loop between them: ${spread(loops)}`;
  info.annotations.push({ type: 'speed', description: told });
  console.log(told);
  expect(await page.locator('.headlines').innerText()).not.toBe(before);
});
