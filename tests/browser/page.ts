import type { Locator, Page } from '@playwright/test';
import { nursery } from './nursery';
import { expect } from './quietPage';

/** Opens the app on what is kept, or on the shipped model, and waits until its numbers stand. */
export async function openApp(page: Page): Promise<void> {
  await page.goto('/');
  await expect(page.getByRole('heading', { name: 'Numbers', exact: true })).toBeAttached();
}

/** Opens the app on the small model of two plans. */
export async function openNursery(page: Page): Promise<void> {
  await openApp(page);
  await chooseFile(page, csvFile('nursery.csv', nursery));
  await expect(page.getByRole('heading', { level: 1 })).toContainText('Does a nursery pay?');
}

/** The row of an entry in the list of numbers, by its label. */
export function rowOf(page: Page, label: string): Locator {
  return page
    .locator('.entry')
    .filter({ has: page.locator('.entry-label').getByRole('button', { name: label, exact: true }) });
}

/** The label of an entry, which opens where it comes from. */
export function labelOf(page: Page, label: string): Locator {
  return page.locator('.entry-label').getByRole('button', { name: label, exact: true });
}

/** The text field of an input, by its label. */
export function fieldOf(page: Page, label: string): Locator {
  return rowOf(page, label).getByRole('textbox').first();
}

/** A headline, by its label. */
export function headlineOf(page: Page, label: string): Locator {
  return page.locator('.headline').filter({ hasText: label });
}

interface FileToOpen {
  readonly name: string;
  readonly mimeType: string;
  readonly buffer: Buffer;
}

export function csvFile(name: string, text: string): FileToOpen {
  return { name, mimeType: 'text/csv', buffer: Buffer.from(text) };
}

/** Unfolds what can be done with the model where the screen is too narrow to show it. */
async function unfoldCommands(page: Page, say: (english: string) => string): Promise<void> {
  const menu = page.getByRole('button', { name: say('Menu') });
  if ((await menu.isVisible()) && (await menu.getAttribute('aria-expanded')) === 'false') await menu.click();
}

/**
 * Opens a file as the button does.
 * @param say a text of the page in its language, by the English one
 */
export async function chooseFile(
  page: Page,
  file: FileToOpen,
  say: (english: string) => string = (text) => text,
): Promise<void> {
  await unfoldCommands(page, say);
  const chooser = page.waitForEvent('filechooser');
  await page.getByRole('button', { name: say('Open a file') }).click();
  await (await chooser).setFiles(file);
}

/** Drops a file on the page. */
export async function dropFile(page: Page, { name, mimeType, buffer }: FileToOpen): Promise<void> {
  const bytes = [...buffer];
  const transfer = await page.evaluateHandle(
    (given) => {
      const data = new DataTransfer();
      data.items.add(new File([new Uint8Array(given.bytes)], given.name, { type: given.mimeType }));
      return data;
    },
    { name, mimeType, bytes },
  );
  await page.dispatchEvent('body', 'dragover', { dataTransfer: transfer });
  await page.dispatchEvent('body', 'drop', { dataTransfer: transfer });
}

/** The bytes of the file that the app saves. */
export async function savedFile(page: Page): Promise<{ name: string; bytes: Buffer }> {
  const saving = page.waitForEvent('download');
  await page.getByRole('button', { name: 'Save a file' }).click();
  const download = await saving;
  const chunks: Buffer[] = [];
  for await (const chunk of await download.createReadStream()) chunks.push(Buffer.from(chunk as Uint8Array));
  return { name: download.suggestedFilename(), bytes: Buffer.concat(chunks) };
}
