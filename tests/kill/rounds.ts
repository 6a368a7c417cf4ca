import { setTimeout as pause } from 'node:timers/promises';
import type { BrowserContext, Page } from '@playwright/test';
import { nursery } from '../browser/nursery';
import { csvFile, fieldOf } from '../browser/page';
import type { Chance } from './chance';
import { listenToTyping, type Typed } from './typed';

/** A page under test and what was typed into it. */
export interface TypedPage {
  /** Name of the file it has open, or that with "(copy)" after it. */
  readonly name: string;
  readonly typed: readonly Typed[];
}

interface Round {
  readonly context: BrowserContext;
  readonly address: string;
  readonly chance: Chance;
  /** Distinguishes the files of this round. */
  readonly name: string;
}

/** What happens until the kill. Resolves once the kill is due; what it left running meets the kill. */
type Play = (round: Round) => Promise<readonly TypedPage[]>;

async function openPage({ context, address }: Round): Promise<{ page: Page; typed: readonly Typed[] }> {
  const page = await context.newPage();
  const typed = await listenToTyping(page);
  await page.goto(address);
  await page.getByRole('heading', { name: 'Numbers', exact: true }).waitFor({ state: 'attached' });
  return { page, typed };
}

async function openFile(page: Page, name: string, text: string): Promise<void> {
  await page.locator('input[type=file]').first().setInputFiles(csvFile(name, text));
  await page.getByRole('status').getByText(`${name} is open.`).waitFor();
}

/** A page with a file of its own. */
async function pageWith(round: Round, name: string, text = nursery): Promise<TypedPage & { readonly page: Page }> {
  const { page, typed } = await openPage(round);
  await openFile(page, name, text);
  return { page, typed, name };
}

/** Types numbers of five digits without a pause, 20 keys a second, until the browser is gone. */
async function typeOn(pages: readonly Page[], chance: Chance): Promise<void> {
  for (let key = 0; ; key += 1) {
    const page = pages[key % pages.length]!;
    const next = pause(50);
    const isFirst = Math.floor(key / pages.length) % 5 === 0;
    if (isFirst) await page.keyboard.press('ControlOrMeta+a');
    await page.keyboard.press(String(chance.whole(isFirst ? 1 : 0, 10)));
    await next;
  }
}

/** Leaves typing to go on until the kill. */
function keepTyping(pages: readonly Page[], chance: Chance): void {
  typeOn(pages, chance).catch(() => undefined);
}

const single: Play = async (round) => {
  const one = await pageWith(round, `${round.name}.csv`);
  await fieldOf(one.page, 'Wage').focus();
  await pause(round.chance.between(0, 200));
  for (let i = round.chance.whole(1, 4); i > 0; i -= 1) {
    await one.page.keyboard.press('ControlOrMeta+a');
    await one.page.keyboard.press(String(round.chance.whole(1, 10)));
    await pause(round.chance.between(0, 400));
  }
  return [one];
};

const burst: Play = async (round) => {
  const one = await pageWith(round, `${round.name}.csv`);
  await fieldOf(one.page, 'Wage').focus();
  keepTyping([one.page], round.chance);
  await pause(round.chance.between(200, 2500));
  return [one];
};

const twoTabs: Play = async (round) => {
  const pages = [await pageWith(round, `${round.name} a.csv`), await pageWith(round, `${round.name} b.csv`)];
  for (const { page } of pages) await fieldOf(page, 'Wage').focus();
  keepTyping(
    pages.map(({ page }) => page),
    round.chance,
  );
  await pause(round.chance.between(300, 2500));
  return pages;
};

/** A second tab on one model: it follows, and its change makes a copy. */
const following: Play = async (round) => {
  const one = await pageWith(round, `${round.name}.csv`);
  await fieldOf(one.page, 'Wage').fill('16');
  await one.page.getByText(/^Kept on this machine at/).waitFor();
  const { page, typed } = await openPage(round);
  await page.getByText(/^Also open elsewhere/).waitFor();
  await fieldOf(page, 'Wage').focus();
  await fieldOf(one.page, 'Wage').focus();
  keepTyping([one.page, page], round.chance);
  await pause(round.chance.between(0, 1200));
  return [one, { name: `${one.name} (copy)`, typed: typed.filter(({ what }) => what === 'wage') }];
};

/** A file without a title gets one, which adds a record: the first writing of the model has a layout. */
const firstWriting: Play = async (round) => {
  const { page, typed } = await openPage(round);
  const untitled = nursery
    .split('\n')
    .filter((_line, i) => i !== 1)
    .join('\n');
  await openFile(page, `${round.name}.csv`, untitled.replace(/,Why a nursery\?.*\n/, ''));
  await page.getByRole('button', { name: 'Change title' }).click();
  await page.locator('.title-form input').fill(`Title of ${round.name}`);
  void page.keyboard.press('Enter').catch(() => undefined);
  await pause(round.chance.between(0, 300));
  return [{ name: `${round.name}.csv`, typed }];
};

/** The browser dies while a file is opened and written for the first time. */
const opening: Play = async (round) => {
  const { page } = await openPage(round);
  void openFile(page, `${round.name}.csv`, nursery).catch(() => undefined);
  await pause(round.chance.between(0, 250));
  return [];
};

/** The browser dies while a version is saved, as one is with each saved file. */
const saving: Play = async (round) => {
  const one = await pageWith(round, `${round.name}.csv`);
  await fieldOf(one.page, 'Wage').focus();
  keepTyping([one.page], round.chance);
  await pause(round.chance.between(100, 900));
  const save = one.page.getByRole('button', { name: 'Save a file' }).first();
  void save.evaluate((button: HTMLElement) => button.click()).catch(() => undefined);
  await pause(round.chance.between(0, 120));
  return [one];
};

export const plays: readonly (readonly [name: string, play: Play])[] = [
  ['burst', burst],
  ['single edits', single],
  ['two tabs', twoTabs],
  ['first writing', firstWriting],
  ['a second tab', following],
  ['saving a file', saving],
  ['opening', opening],
];
