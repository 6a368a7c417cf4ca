import { readFileSync } from 'node:fs';
import type { Page } from '@playwright/test';
import { chooseFile, csvFile } from './page';
import { pressPrint } from './printing';
import { expect } from './quietPage';

/** A text of the program in the language of the page, by its English one. */
type Say = (english: string) => string;

const inEnglish: Say = (text) => text;

/** A screen, and how to come to it from the one before it in the list. */
interface ScreenToVisit {
  readonly name: string;
  readonly open: (page: Page, say?: Say) => Promise<void>;
  /** What of the page is its own, where the numbers stand beside it. */
  readonly own: string;
}

const isNarrow = (page: Page): boolean => (page.viewportSize()?.width ?? 0) < 1100;

async function ask(page: Page, question: string, say: Say): Promise<void> {
  const questions = page.getByRole('navigation', { name: say('Questions') });
  await questions.getByRole('button', { name: say(question), exact: true }).click();
}

/** Unfolds what can be done with the model where the window is too narrow to show it. */
async function openMenu(page: Page, say: Say): Promise<void> {
  const menu = page.getByRole('button', { name: say('Menu') });
  if ((await menu.isVisible()) && (await menu.getAttribute('aria-expanded')) === 'false') await menu.click();
}

async function command(page: Page, name: string, say: Say): Promise<void> {
  await openMenu(page, say);
  await page
    .getByRole('banner')
    .getByRole('button', { name: say(name), exact: true })
    .click();
}

async function openTrials(page: Page, say: Say): Promise<void> {
  const choosing = page.waitForEvent('filechooser');
  await page.getByRole('button', { name: say('Open trials (CSV)') }).click();
  const text = readFileSync('models/trials/transplant-trials.csv', 'utf8');
  await (await choosing).setFiles(csvFile('trials.csv', text));
  await expect(page.locator('.timing .finding, .timing .said').first()).toBeVisible();
}

const question = (label: string, own: string, then?: (page: Page, say: Say) => Promise<void>): ScreenToVisit => ({
  name: label,
  own,
  open: async (page, say = inEnglish) => {
    await ask(page, label, say);
    await expect(page.locator(own)).toBeVisible();
    await then?.(page, say);
  },
});

/** Every screen, in an order in which each can be come to from the one before; the shipped model is open before. */
export const everyScreen: readonly ScreenToVisit[] = [
  {
    name: 'Numbers',
    own: '.numbers-half',
    open: async (page, say = inEnglish) => {
      if (isNarrow(page)) await ask(page, 'Numbers', say);
      for (const label of ['Margin', 'Wage'])
        await page.locator('.entry-label').getByRole('button', { name: label, exact: true }).first().click();
    },
  },
  question('Plans', '.plans'),
  question('Beds', '.beds'),
  question('What matters', '.what-matters'),
  question('Breakeven', '.breakeven'),
  question('How sure', '.how-sure'),
  question('The case', '.the-case'),
  question('Timing', '.timing', openTrials),
  {
    name: 'the large watch',
    own: 'dialog[open]',
    open: async (page, say = inEnglish) => {
      await page.getByRole('button', { name: say('Large watch for wet hands') }).click();
      await expect(page.locator('dialog[open]')).toBeVisible();
    },
  },
  {
    name: 'the method',
    own: '.method',
    open: async (page, say = inEnglish) => {
      await page
        .locator('dialog[open]')
        .getByRole('button', { name: say('Close') })
        .click();
      await page
        .locator('.foot')
        .getByRole('button', { name: say('How everything is worked out') })
        .click();
      await expect(page.locator('.method')).toBeVisible();
    },
  },
  {
    name: 'how entries hang together',
    own: '.together',
    open: async (page, say = inEnglish) => {
      if (isNarrow(page)) await ask(page, 'Numbers', say);
      await page
        .locator('.numbers-head')
        .getByRole('button', { name: say('See how it hangs together') })
        .click();
      await expect(page.locator('.together-picture')).toBeVisible({ timeout: 30_000 });
    },
  },
  {
    name: 'the shelf',
    own: '.top-bar',
    open: async (page, say = inEnglish) => {
      await openMenu(page, say);
      await page.locator('.shelf > summary').click();
      await expect(page.locator('.shelf-entries > li').first()).toBeVisible();
    },
  },
  {
    name: 'the set-up',
    own: 'main',
    open: async (page, say = inEnglish) => {
      await page.keyboard.press('Escape');
      await command(page, 'Set up my farm', say);
      await expect(page.locator('.outcome-table')).toBeVisible();
    },
  },
  {
    name: 'a lesson before a class',
    own: 'main',
    open: async (page, say = inEnglish) => {
      await chooseFile(page, csvFile('density-lesson.csv', readFileSync('models/density-lesson.csv', 'utf8')), say);
      await page.getByRole('button', { name: say('Teach it step by step') }).click();
      await expect(page.locator('.teach')).toBeVisible();
    },
  },
];

/** Unfolds all that can be unfolded of a screen, lets all of it load and compute as for paper, and waits for that. */
export async function unfoldAll(page: Page, own: string): Promise<void> {
  const unfold = (): Promise<number> =>
    page.evaluate((within) => {
      const inside = [...document.querySelectorAll(within)].flatMap((part) => [...part.querySelectorAll('*')]);
      const folds = inside.filter((one) => one instanceof HTMLDetailsElement && !one.open && !one.closest('header'));
      for (const fold of folds) (fold as HTMLDetailsElement).open = true;
      const more = inside.filter((one) => one.matches('.more[aria-expanded="false"], .teach-answer-button'));
      for (const button of more) (button as HTMLElement).click();
      return folds.length + more.length;
    }, own);
  const word = page.locator(own).locator('.print-word').last();
  const hasWord = own !== 'main' && (await word.count()) > 0;
  for (let left = await unfold(), round = 0; left > 0 && round < 3; left = await unfold(), round += 1) {
    if (hasWord) await pressPrint(page, word);
    await page.evaluate(() => dispatchEvent(new Event('afterprint')));
  }
}
