import type { Locator, Page } from '@playwright/test';
import { expect } from './quietPage';
import { readPdf, type PdfPage } from './readPdf';

/** Counts how often the page prints, in place of the browser’s dialog. */
export async function withoutDialog(page: Page): Promise<void> {
  await page.addInitScript(() => {
    window.print = () => {
      document.documentElement.dataset['prints'] = String(Number(document.documentElement.dataset['prints'] ?? 0) + 1);
    };
  });
}

const printsOf = async (page: Page): Promise<number> =>
  Number((await page.locator('html').getAttribute('data-prints')) ?? 0);

/** Presses a word that prints and waits until the page does: it is then laid out as it is printed. */
export async function pressPrint(page: Page, word: Locator): Promise<void> {
  const before = await printsOf(page);
  // By keyboard: what loads meanwhile may move the word away from under a pointer.
  await word.press('Enter');
  await expect.poll(() => printsOf(page), { timeout: 30_000 }).toBe(before + 1);
}

/** What the browser prints now, without waiting for anything, as its own command does. */
export async function paperOf(page: Page, format: 'A4' | 'Letter' = 'A4'): Promise<PdfPage[]> {
  return readPdf(await page.pdf({ format }));
}
