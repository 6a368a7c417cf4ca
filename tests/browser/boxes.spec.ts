import type { Page } from '@playwright/test';
import { fieldOf, openApp } from './page';
import { expect, test } from './quietPage';

/**
 * What the page writes while a field takes on these values: the texts that stand in no box whose size does not follow
 * from them (CSS Containment 2, size and layout), by the elements they stand in, and how many texts there were.
 */
async function writtenOutsideBoxes(page: Page, values: readonly string[]): Promise<{ loose: string[]; all: number }> {
  return page.evaluate(async (texts) => {
    const field = document.activeElement as HTMLInputElement;
    const frame = (): Promise<unknown> => new Promise((begins) => requestAnimationFrame(begins));
    const written: Node[] = [];
    const watcher = new MutationObserver((changes) => written.push(...changes.map(({ target }) => target)));
    watcher.observe(document.body, { subtree: true, characterData: true });
    for (const text of texts) {
      field.value = text;
      field.dispatchEvent(new InputEvent('input', { bubbles: true }));
      await frame();
    }
    watcher.disconnect();
    const isBox = (element: Element): boolean => /size.*layout|strict/.test(getComputedStyle(element).contain);
    const boxed = (element: Element | null): boolean =>
      element !== null && (isBox(element) || boxed(element.parentElement));
    const inSight = written.map((node) => node.parentElement).filter((element) => element?.checkVisibility());
    return {
      loose: inSight.filter((element) => !boxed(element)).map((element) => element?.outerHTML ?? ''),
      all: inSight.length,
    };
  }, values);
}

async function leftEdges(page: Page): Promise<number[]> {
  return page.locator('.headline-value').evaluateAll((all) => all.map((one) => one.getBoundingClientRect().left));
}

test('what a keystroke writes stands in boxes of their own size, so that the page around them is left alone', async ({
  page,
}) => {
  await openApp(page);
  await expect(page.locator('.tornado')).toBeVisible();
  await fieldOf(page, 'Move a plant to a finishing board').focus();
  const { loose, all } = await writtenOutsideBoxes(page, ['12.5', '13', '13.5', '14', '14.5']);
  expect(all).toBeGreaterThan(50);
  expect(loose).toEqual([]);
});

for (const width of [1440, 768, 390]) {
  test(`headlines stay where they are while their numbers change, ${width} px`, async ({ page }) => {
    await page.setViewportSize({ width, height: 900 });
    await openApp(page);
    const field = fieldOf(page, 'Move a plant to a finishing board');
    const [edges, height] = [await leftEdges(page), await page.locator('.headlines').boundingBox()];
    const before = await page.locator('.headlines').innerText();
    for (const text of ['10', '11.1', '15.3', '9.7']) {
      await field.fill(text);
      await expect(field).toHaveValue(text);
      expect(await leftEdges(page)).toEqual(edges);
    }
    expect(await page.locator('.headlines').innerText()).not.toBe(before);
    expect((await page.locator('.headlines').boundingBox())?.height).toBe(height?.height);
  });
}

test('headlines that made room for a number far too long give it back when typing rests', async ({ page }) => {
  await openApp(page);
  const field = fieldOf(page, 'Price of a head');
  const height = async (): Promise<number> => (await page.locator('.headlines').boundingBox())?.height ?? NaN;
  const before = await height();
  const price = await field.inputValue();
  await field.fill('800000');
  await expect.poll(height).toBeGreaterThan(before);
  await field.fill(price);
  await expect.poll(height).toBe(before);
});

test('on a phone many warnings fold to the first and a count', async ({ page }) => {
  await page.setViewportSize({ width: 390, height: 844 });
  await openApp(page);
  await fieldOf(page, 'Finishing time after the nursery').fill('11.5');
  const warnings = page.locator('.failing p');
  await expect(page.getByRole('button', { name: 'and 3 more warnings' })).toBeVisible();
  await expect(warnings).toHaveCount(1);
  await page.getByRole('button', { name: 'and 3 more warnings' }).click();
  await expect(warnings).toHaveCount(4);
  await page.emulateMedia({ media: 'print' });
  await expect(warnings).toHaveCount(4);
});

test('the box of a finding is as high as its text, however many lines that takes', async ({ page }) => {
  await openApp(page);
  await expect(page.locator('.tornado')).toBeVisible();
  const box = page.locator('.said-box').first();
  const heights = (): Promise<number[]> =>
    box.evaluate((element) => [element, ...element.children].map((one) => one.getBoundingClientRect().height));
  const [before = 0] = await heights();
  await page.setViewportSize({ width: 1110, height: 900 });
  await expect.poll(async () => (await heights())[0]).toBeGreaterThan(before);
  const [boxHeight, textHeight] = await heights();
  expect(boxHeight).toBeCloseTo(textHeight ?? NaN, 0);
});
