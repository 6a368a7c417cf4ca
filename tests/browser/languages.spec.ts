import type { Page } from '@playwright/test';
import { readFileSync, statSync } from 'node:fs';
import type { Catalogue } from '../../src/language/catalogue';
import { begin, end, pseudo, pseudoCatalogue } from '../language/pseudo';
import { beyondTheSides } from './access';
import { everyScreen, unfoldAll } from './everyScreen';
import { chooseFile, csvFile } from './page';
import { withoutDialog } from './printing';
import { expect, test } from './quietPage';
import { smallFarm } from './smallFarm';

const { texts } = JSON.parse(readFileSync('src/language/catalogues/es.json', 'utf8')) as Catalogue;
const inSpanish = (english: string): string => texts[english] ?? english;

/** Opens the program in a language that nobody speaks: its texts come in place of the Spanish ones. */
async function openPseudo(page: Page): Promise<void> {
  await page.route(/\/assets\/es-[^/]+\.js$/, (route) =>
    route.fulfill({
      contentType: 'text/javascript',
      body: `export default ${JSON.stringify(pseudoCatalogue())};`,
    }),
  );
  await page.addInitScript(() => localStorage.setItem('raftmargin language', 'es'));
  await page.goto('/');
  await expect(page.getByRole('heading', { name: pseudo('Numbers'), exact: true })).toBeAttached();
}

function wordsIn(text: string): string[] {
  return [...text.matchAll(/\p{L}{2,}/gu)].map(([word]) => word.toLowerCase());
}

/** What the browser itself writes in a language: months and days. */
const months = Array.from({ length: 12 }, (_, month) =>
  new Intl.DateTimeFormat('es', { dateStyle: 'full' }).format(new Date(2031, month, 1 + month)),
);
const shortened = Array.from({ length: 12 }, (_, month) =>
  new Intl.DateTimeFormat('es', { month: 'short', weekday: 'short' }).format(new Date(2031, month, 1 + month)),
);
/** What stays as it is: words of files that are opened, the program's name, languages by their own, kinds of file. */
const files = ['models/trials/transplant-trials.csv', 'models/density-lesson.csv'].map((path) =>
  readFileSync(path, 'utf8'),
);
const kept = new Set(
  wordsIn([smallFarm, ...files, ...months, ...shortened, 'Raftmargin English Español CSV SVG PNG HTML'].join(' ')),
);

/** Lines of a part of the page in which words stand that did not go through the catalogue. */
async function untranslated(page: Page, within: string): Promise<string[]> {
  const lines = await page.locator(within).evaluateAll((parts) =>
    parts.flatMap((part) => {
      // Formulas, and signs of units, functions and currencies, are the same in every language.
      const isSigns = (one: HTMLElement): boolean => one.tagName !== 'DD' || / = |^[A-Z]{3}, /.test(one.textContent);
      const code = [
        ...part.querySelectorAll<HTMLElement>('code, .method-formulas, .formula-help dd, .plan-letter, .remark-letter'),
      ].filter(isSigns);
      for (const one of code) one.hidden = true;
      const named = [...part.querySelectorAll('[aria-label], [title], [placeholder]')].flatMap((one) =>
        ['aria-label', 'title', 'placeholder'].map((name) => one.getAttribute(name) ?? ''),
      );
      const said = (part as HTMLElement).innerText.split('\n');
      for (const one of code) one.hidden = false;
      return [...said, ...named];
    }),
  );
  return [...new Set(lines.filter((line) => wordsIn(outsideMarks(line)).some((word) => !kept.has(word))))];
}

/** What of a line stands in no text of the catalogue. */
function outsideMarks(line: string): string {
  let depth = 0;
  const outside = Array.from(line, (character) => {
    if (character === begin) depth += 1;
    else if (character === end) depth -= 1;
    else if (depth === 0) return character;
    return ' ';
  });
  return outside.join('');
}

test('every screen, unfolded, at 320 px: texts 40 % longer break nothing, and none is left in English', async ({
  page,
}) => {
  test.setTimeout(400_000);
  await page.emulateMedia({ reducedMotion: 'reduce' });
  await page.setViewportSize({ width: 320, height: 640 });
  await withoutDialog(page);
  await openPseudo(page);
  await chooseFile(page, csvFile('small-farm.csv', smallFarm), pseudo);
  const found: Record<string, string[]> = {};
  for (const { name, own: part, open } of everyScreen) {
    await open(page, pseudo);
    await unfoldAll(page, part);
    const wrong = [...(await beyondTheSides(page)), ...(await untranslated(page, part))];
    if (wrong.length > 0) found[name] = wrong;
  }
  expect(found).toEqual({});
});

test.describe('a browser in Spanish', () => {
  test.use({ locale: 'es-MX' });

  test('has the program, the shipped model and numbers in Spanish', async ({ page }) => {
    await page.goto('/');
    await expect(page.getByRole('heading', { level: 1 })).toContainText('¿Conviene contratar');
    await expect(page.locator('html')).toHaveAttribute('lang', 'es');
    await expect(page.getByRole('heading', { name: inSpanish('Numbers'), exact: true })).toBeVisible();
    await expect(page.locator('.headlines')).toContainText('EUR/año');
    await expect(page.locator('.headlines')).toContainText('144,328');
  });

  test('keeps the work when the language is changed, and the language when the page is opened again', async ({
    page,
  }) => {
    await page.goto('/');
    const wage = page.getByRole('textbox', { name: /^Salario por hora/ }).first();
    await wage.fill('16');
    await wage.press('Enter');
    await expect(page.locator('.kept')).toHaveAttribute('data-state', 'kept');
    await page.getByRole('combobox', { name: inSpanish('Language') }).selectOption('English');
    await expect(page.getByRole('heading', { name: 'Numbers', exact: true })).toBeVisible();
    await expect(page.locator('html')).toHaveAttribute('lang', 'en');
    await expect(page.getByRole('textbox', { name: /^Salario por hora/ }).first()).toHaveValue('16');
    await page.reload();
    await expect(page.getByRole('heading', { name: 'Numbers', exact: true })).toBeVisible();
  });

  test('saves a case as a live page in Spanish, which opens by itself', async ({ page }, info) => {
    await page.goto('/');
    await page.getByRole('button', { name: inSpanish('The case'), exact: true }).click();
    const saving = page.waitForEvent('download');
    await page.getByRole('button', { name: inSpanish('Save as a live page') }).click();
    const path = info.outputPath('caso.html');
    await (await saving).saveAs(path);
    expect(statSync(path).size).toBeLessThanOrEqual(600_000);
    await page.context().setOffline(true);
    await page.goto(`file://${path}`);
    await expect(page.locator('html')).toHaveAttribute('lang', 'es');
    await expect(page.getByRole('heading', { level: 1 })).toContainText('¿Conviene contratar');
    await expect(page.locator('.verdict')).toContainText('de 100 simulaciones', { timeout: 30_000 });
    await page.waitForLoadState('load');
    const said = (await page.locator('body').innerText()).split(/[\n\t]/).map((line) => line.trim());
    // A text that the page has only in English would stand there as its key.
    const english = Object.entries(texts).filter(([key, text]) => key !== text && /^\p{Lu}.*\p{L}{2}/u.test(key));
    expect(english.filter(([key]) => said.includes(key))).toEqual([]);
  });

  test('writes a model whose names, units and formulas are those of the English one', async ({ page }) => {
    await page.goto('/');
    const saving = page.waitForEvent('download');
    await page.getByRole('button', { name: inSpanish('Save a file') }).click();
    const stream = await (await saving).createReadStream();
    const chunks: Buffer[] = [];
    for await (const chunk of stream) chunks.push(Buffer.from(chunk as Uint8Array));
    const text = Buffer.concat(chunks).toString();
    expect(text).toMatch(/^name,label,unit,formula,low,high,shape,step,group,role,/);
    expect(text).toContain('\nstage1_time,Tiempo en planchas de vivero,day,nursery_time,');
  });
});
