import type { Page } from '@playwright/test';
import { badStates } from './badStates';
import { chooseFile, csvFile, openApp } from './page';
import { expect, test } from './quietPage';

/** Words that come of a number or text that is not there, and two full stops in a row that are no three dots. */
const slips = /\bNaN\b|Infinity|∞|\bundefined\b|\bnull\b|\[object|(?<![.…])\.\.(?!\.)|\be[+-]?\d{2,}\b/;

/** What people see or hear of the page, once it has not changed for a moment. */
async function settledText(page: Page): Promise<string> {
  return page.evaluate(async () => {
    const text = (): string => {
      const named = [...document.querySelectorAll('[aria-label], [title]')].map((element) =>
        [element.getAttribute('aria-label'), element.getAttribute('title')].join('\n'),
      );
      return [document.body.innerText, ...named].join('\n');
    };
    const begun = performance.now();
    let last = text();
    let since = begun;
    while (performance.now() - since < 120 && performance.now() - begun < 1500) {
      await new Promise((resolve) => setTimeout(resolve, 30));
      const now = text();
      if (now === last) continue;
      last = now;
      since = performance.now();
    }
    return last;
  });
}

function slipsIn(text: string): string[] {
  return text.split('\n').filter((line) => slips.test(line));
}

test('every screen in bad states says no NaN, no undefined and no error', async ({ page }) => {
  test.setTimeout(400_000);
  // High enough that all parts of a screen come into sight and are drawn.
  await page.setViewportSize({ width: 1440, height: 5000 });
  await openApp(page);
  const found: string[] = [];
  for (const { name, text } of badStates()) {
    await chooseFile(page, csvFile(`${name}.csv`, text));
    await expect(page.getByRole('heading', { level: 1 })).toContainText(name);
    const questions = page.getByRole('navigation', { name: 'Questions' }).getByRole('button');
    for (const question of await questions.all()) {
      await question.click();
      const label = await question.textContent();
      const said = await settledText(page);
      found.push(...slipsIn(said).map((line) => `${name}, ${label}: ${line.slice(0, 200)}`));
    }
  }
  expect([...new Set(found)]).toEqual([]);
});
