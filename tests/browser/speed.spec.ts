import { openApp } from './page';
import { expect, test } from './quietPage';

const keystrokes = 60;

/** Runs in the page: milliseconds from a keystroke in the field that has the focus to the end of the next frame. */
async function timeKeystrokes(count: number): Promise<number[]> {
  const field = document.activeElement as HTMLInputElement;
  const times: number[] = [];
  for (let i = 0; i < count; i += 1) {
    await new Promise((rest) => setTimeout(rest, 80));
    await new Promise((frame) => requestAnimationFrame(frame));
    const start = performance.now();
    field.value = (10 + i / 10).toFixed(1);
    field.dispatchEvent(new InputEvent('input', { bubbles: true }));
    await new Promise<void>((painted) => requestAnimationFrame(() => {
      const { port1, port2 } = new MessageChannel();
      port1.onmessage = () => painted();
      port2.postMessage(undefined);
    }));
    times.push(performance.now() - start);
  }
  return times.sort((a, b) => a - b);
}

test('a keystroke moves headlines, rows and the chart; how soon they are drawn is told', async ({ page }, info) => {
  await openApp(page);
  await expect(page.getByText('Drawing')).toHaveCount(0);
  await page.getByRole('textbox', { name: /^Move a plant/ }).focus();
  const before = await page.locator('.headlines').innerText();
  const times = await page.evaluate(timeKeystrokes, keystrokes);
  const at = (share: number): string => times[Math.floor(share * keystrokes)]!.toFixed(1);
  const told = `keystroke to drawn: median ${at(0.5)} ms, 95th percentile ${at(0.95)} ms (one frame is 16.7 ms)`;
  info.annotations.push({ type: 'speed', description: told });
  console.log(told);
  expect(await page.locator('.headlines').innerText()).not.toBe(before);
});
