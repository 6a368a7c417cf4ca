import { openApp } from './page';
import { expect, test } from './quietPage';

const keystrokes = 160;
/** The first keystrokes, while the browser is still compiling what they run, are told apart. */
const first = 20;

/**
 * Runs in the page: milliseconds from a keystroke in the field that has the focus until the frame that shows it is laid
 * out and painted. The keystroke comes where a frame begins: what a frame has to do is timed, not the wait for one.
 */
async function timeKeystrokes(count: number): Promise<number[]> {
  const field = document.activeElement as HTMLInputElement;
  const frame = (): Promise<unknown> => new Promise((begins) => requestAnimationFrame(begins));
  // Runs before other work that waits, as soon as the frame is painted.
  const painted = (): Promise<void> => scheduler.postTask(() => undefined, { priority: 'user-blocking' });
  const times: number[] = [];
  for (let i = 0; i < count; i += 1) {
    await new Promise((rest) => setTimeout(rest, 80));
    await frame();
    const start = performance.now();
    field.value = (10 + i / 10).toFixed(1);
    field.dispatchEvent(new InputEvent('input', { bubbles: true }));
    await painted();
    times.push(performance.now() - start);
  }
  return times;
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
  const times = await page.evaluate(timeKeystrokes, keystrokes);
  const told = `a frame with a keystroke: ${spread(times.slice(first))}; the first ${first}: ${spread(times.slice(0, first))}`
    + ' (one frame is 16.7 ms)';
  info.annotations.push({ type: 'speed', description: told });
  console.log(told);
  expect(await page.locator('.headlines').innerText()).not.toBe(before);
});
