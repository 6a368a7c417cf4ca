import { readFile } from 'node:fs/promises';
import type { Locator, Page } from '@playwright/test';

/** The part that takes a table out: the next one after it. */
export function choicesAfter(table: Locator): Locator {
  return table.locator('xpath=following::details[contains(@class, "take-out")][1]');
}

interface TakenFile {
  readonly name: string;
  readonly bytes: Buffer;
}

/** Presses a choice and gives the file that comes of it. */
export async function fileBy(page: Page, choices: Locator, choice: string): Promise<TakenFile> {
  const saving = page.waitForEvent('download');
  await choices.getByRole('button', { name: choice }).click();
  const file = await saving;
  return { name: file.suggestedFilename(), bytes: await readFile(await file.path()) };
}

/** The lines of a table as it is saved with all digits, without the byte-order mark. */
export async function savedLines(page: Page, table: Locator): Promise<{ name: string; lines: string[] }> {
  const choices = choicesAfter(table);
  await choices.locator('summary').click();
  await choices.getByRole('radio', { name: 'with all digits' }).check();
  const { name, bytes } = await fileBy(page, choices, 'Save it as CSV');
  return { name, lines: bytes.toString('utf8').replace('\ufeff', '').split('\r\n') };
}
