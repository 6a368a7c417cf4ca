import { everyScreen } from './everyScreen';
import { badNumbers, badStates, shippedTexts, withInputs } from './badStates';
import { chooseFile, csvFile, openApp } from './page';
import { own } from './ownAnswers';
import { expect, test } from './quietPage';
import { settledText, slipsIn } from './slips';

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

/** How to come to a screen that is no question, from any question. */
const opened = (name: string) => everyScreen.find((screen) => screen.name === name)!.open;

test('how entries hang together in bad states says no NaN, no undefined and no error', async ({ page }) => {
  test.setTimeout(300_000);
  await openApp(page);
  const found: string[] = [];
  for (const { name, text } of badStates()) {
    await chooseFile(page, csvFile(`${name}.csv`, text));
    await expect(page.getByRole('heading', { level: 1 })).toContainText(name);
    const asked = page.locator('.numbers-head').getByRole('button', { name: 'See how it hangs together' });
    if (!(await page.locator('.together').isVisible()) && (await asked.isVisible())) await asked.click();
    found.push(...slipsIn(await settledText(page)).map((line) => `${name}: ${line.slice(0, 200)}`));
  }
  expect([...new Set(found)]).toEqual([]);
});

test('a lesson before a class with bad numbers says no NaN, no undefined and no error', async ({ page }) => {
  test.setTimeout(200_000);
  await openApp(page);
  const [, lesson] = shippedTexts().find(([name]) => name === 'density-lesson')!;
  const found: string[] = [];
  for (const number of badNumbers) {
    await chooseFile(page, csvFile('density-lesson.csv', withInputs(lesson, number)));
    const begin = page.getByRole('button', { name: 'Teach it step by step' });
    if (!(await begin.isVisible())) continue;
    await begin.click();
    await expect(page.locator('.teach')).toBeVisible();
    const next = page.getByRole('button', { name: 'Next', exact: true });
    for (let isLast = false; !isLast;) {
      const answer = page.getByRole('button', { name: 'Show the answer' });
      if (await answer.isVisible()) await answer.click();
      found.push(...slipsIn(await settledText(page)).map((line) => `${number}: ${line.slice(0, 200)}`));
      isLast = await next.isDisabled();
      if (!isLast) await next.click();
    }
    await page.getByRole('button', { name: 'Back to the numbers' }).click();
  }
  expect([...new Set(found)]).toEqual([]);
});

test('the set-up with bad answers says no NaN, no undefined and no error', async ({ page }) => {
  test.setTimeout(200_000);
  await openApp(page);
  await opened('the set-up')(page);
  const found: string[] = [];
  const numbers = own.filter(([, text]) => /^\d+$/.test(text)).map(([label]) => label);
  for (const bad of [...badNumbers, 'twelve', '1,234', '']) {
    for (const label of numbers) await page.getByLabel(label, { exact: true }).fill(bad);
    found.push(...slipsIn(await settledText(page)).map((line) => `${bad}: ${line.slice(0, 200)}`));
    // And each alone, among answers that are sound.
    for (const [label, text] of own) await page.getByLabel(label, { exact: true }).fill(text);
    for (const label of numbers) {
      const field = page.getByLabel(label, { exact: true });
      const sound = await field.inputValue();
      await field.fill(bad);
      found.push(...slipsIn(await settledText(page)).map((line) => `${label} ${bad}: ${line.slice(0, 200)}`));
      await field.fill(sound);
    }
  }
  expect([...new Set(found)]).toEqual([]);
});

test('the page of methods says no NaN, no undefined and no error', async ({ page }) => {
  await openApp(page);
  await page.locator('.foot').getByRole('button', { name: 'How everything is worked out' }).click();
  await expect(page.locator('.method')).toBeVisible();
  expect(slipsIn(await settledText(page))).toEqual([]);
});
