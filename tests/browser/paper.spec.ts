import { readFileSync } from 'node:fs';
import type { Locator, Page } from '@playwright/test';
import { bestWeeksTexts } from '../../src/present/beds/bestWeeks/texts';
import { howSureTexts } from '../../src/present/howSure/texts';
import { frameTexts } from '../../src/present/page/frameTexts';
import { commonTexts } from '../../src/present/text/commonTexts';
import { assumedTexts } from '../../src/present/theCase/assumedTexts';
import { hangsOnTexts } from '../../src/present/theCase/hangsOnTexts';
import { switchingTexts } from '../../src/present/whatMatters/switching/texts';
import { csvFile, openApp } from './page';
import { paperOf, pressPrint, withoutDialog } from './printing';
import { expect, test } from './quietPage';
import type { PdfPage } from './readPdf';

/** What the screen says while something is under way; never on paper. */
const waitingTexts = [
  commonTexts.oneMoment,
  commonTexts.working,
  commonTexts.workingLines,
  frameTexts.drawing,
  frameTexts.opening,
  hangsOnTexts.looking,
  assumedTexts.looking,
  bestWeeksTexts.looking,
  switchingTexts.looking,
  howSureTexts.driversToCome,
];

/** The margins of a page in points, as print.css has them, with a point for what is rounded. */
const aside = (15 / 25.4) * 72 - 1;

/**
 * Letters and signs alone: lines break elsewhere on paper, letters may be joined into one sign, and a type has one
 * shape for the apostrophe and the letter that looks like it.
 */
const signs = (text: string): string => text.normalize('NFKC').replace(/\s+/g, '').replaceAll('ʼ', '’');

const textOf = (pages: readonly PdfPage[]): string => signs(pages.map(({ text }) => text).join(' '));

function expectSoundPaper(pages: readonly PdfPage[], format: 'A4' | 'Letter'): void {
  const [width, height] = format === 'A4' ? [595, 842] : [612, 792];
  for (const [place, { runs, text, ...size }] of pages.entries()) {
    expect(Math.abs(size.width - width) + Math.abs(size.height - height)).toBeLessThan(3);
    expect(text).toContain(`${place + 1} / ${pages.length}`);
    expect(text).toMatch(/Does it pay to hire a transplanter\?.* – Raftmargin · \d{1,2} \w+ \d{4}/);
    const outside = runs.filter(
      ({ left, right, bottom, top }) =>
        left < aside || right > size.width - aside + 1 || bottom < 15 || top > size.height - 25,
    );
    expect(outside).toEqual([]);
  }
  for (const text of waitingTexts) expect(textOf(pages)).not.toContain(signs(text));
}

async function ask(page: Page, question: string): Promise<void> {
  await page.getByRole('navigation', { name: 'Questions' }).getByRole('button', { name: question }).click();
}

async function openTrials(page: Page): Promise<void> {
  const choosing = page.waitForEvent('filechooser');
  await page.getByRole('button', { name: 'Open trials (CSV)' }).click();
  await (await choosing).setFiles(csvFile('trials.csv', readFileSync('models/trials/transplant-trials.csv', 'utf8')));
}

interface Asked {
  readonly question: string;
  readonly word: string;
  /** Headings that stand on the paper. */
  readonly headings: readonly string[];
  readonly before?: (page: Page) => Promise<void>;
}

const asked: readonly Asked[] = [
  {
    question: 'What matters',
    word: commonTexts.printQuestion,
    headings: [
      'What matters',
      'Which guesses drive the spread',
      'Per cent for per cent',
      'How wrong a guess may be',
      'Side by side',
    ],
  },
  { question: 'Breakeven', word: commonTexts.printQuestion, headings: ['Breakeven', 'Two inputs at once'] },
  {
    question: 'How sure',
    word: commonTexts.printQuestion,
    headings: ['How sure', 'Which guesses drive the spread', 'What is worth measuring'],
  },
  {
    question: 'Beds',
    word: 'Print the beds',
    headings: [
      'Beds',
      'Why not share boards by weeks?',
      'What rounding costs',
      'The year from an empty bed',
      'Next week’s work',
      'When the leaves touch',
      'Best weeks',
    ],
  },
  {
    question: 'Plans',
    word: commonTexts.printQuestion,
    headings: ['Plans', 'The plans of this model', 'Side by side', 'What differs', 'Enterprise budget of one plan'],
  },
  {
    question: 'Timing',
    word: commonTexts.printQuestion,
    headings: ['Timing', 'Each step', 'Learning', 'Lost and culled', 'Before you time someone'],
    before: openTrials,
  },
];

const button = (page: Page, name: string): Locator => page.getByRole('button', { name, exact: true });

for (const { question, word, headings, before } of asked) {
  test(`${question} prints as A4 and Letter with all of its parts, numbered pages and nothing cut`, async ({
    page,
  }) => {
    test.slow();
    await withoutDialog(page);
    await openApp(page);
    await ask(page, question);
    await before?.(page);
    for (const format of ['A4', 'Letter'] as const) {
      await pressPrint(page, button(page, word));
      const pages = await paperOf(page, format);
      expectSoundPaper(pages, format);
      const text = textOf(pages);
      for (const heading of headings) expect(text).toContain(signs(heading));
      expect(text).not.toContain(signs(commonTexts.notComputed));
      expect(text).not.toContain(signs(word));
    }
  });
}

test('the case prints on two pages with its verdict, its budget and all that it rests on', async ({ page }) => {
  test.slow();
  await withoutDialog(page);
  await openApp(page);
  await ask(page, 'The case');
  const screen = page.locator('.the-case');
  for (const format of ['A4', 'Letter'] as const) {
    await pressPrint(page, button(page, 'Print the case'));
    const pages = await paperOf(page, format);
    expect(pages).toHaveLength(2);
    expectSoundPaper(pages, format);
    const text = textOf(pages);
    // As laid out for paper: what is not on it has no text then.
    await page.emulateMedia({ media: 'print' });
    const said = await screen.locator('.verdict, .finding, .odds, h3').filter({ visible: true }).allInnerTexts();
    expect(said.length).toBeGreaterThanOrEqual(6);
    const money = await screen.locator('.budget td').allInnerTexts();
    expect(money.filter((amount) => /\d/.test(amount)).length).toBeGreaterThanOrEqual(8);
    for (const part of [...said, ...money]) expect(text).toContain(signs(part));
    await page.emulateMedia({ media: null });
    expect(text).not.toContain(signs(commonTexts.notComputed));
  }
});

test('the whole page prints with the numbers and the question beside them, all of it worked out', async ({ page }) => {
  test.slow();
  await withoutDialog(page);
  await openApp(page);
  await pressPrint(page, button(page, 'Print the whole page'));
  const pages = await paperOf(page);
  expectSoundPaper(pages, 'A4');
  for (const part of ['Move a plant to a finishing board', 'Per cent for per cent', 'How wrong a guess may be'])
    expect(textOf(pages)).toContain(signs(part));
  expect(textOf(pages)).not.toContain(signs(commonTexts.notComputed));
});

test('the browser’s own command does not wait: what is not worked out yet says so on paper', async ({ page }) => {
  await openApp(page);
  await expect(page.locator('.what-matters canvas').first()).toBeVisible();
  const pages = await paperOf(page);
  expectSoundPaper(pages, 'A4');
  const text = textOf(pages);
  expect(text).toContain(signs(`How wrong a guess may be ${commonTexts.notComputed}`));
});

test('while printing waits a person can have it at once, or not at all', async ({ page }) => {
  test.slow();
  await withoutDialog(page);
  await openApp(page);
  await ask(page, 'How sure');
  await page.getByRole('textbox', { name: 'draws' }).fill('1000000');
  const told = page.getByText('It is printed as soon as everything on it is worked out');
  await button(page, commonTexts.printQuestion).click();
  await expect(told).toBeVisible();
  await button(page, 'Do not print').click();
  await expect(told).toBeHidden();
  await expect(page.locator('html')).not.toHaveAttribute('data-printed');
  await button(page, commonTexts.printQuestion).click();
  await expect(told).toBeVisible();
  await pressPrint(page, button(page, 'Print what there is'));
  const pages = await paperOf(page);
  expectSoundPaper(pages, 'A4');
  expect(textOf(pages)).toMatch(/Printedafter[\d,]+of1,000,000draws|Notcomputedwhenthiswasprinted/);
});
