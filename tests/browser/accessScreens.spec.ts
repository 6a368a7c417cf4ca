import type { Page } from '@playwright/test';
import { axeFindings, beyondTheSides, coveredShare, smallTargets, speechlessPictures } from './access';
import { everyScreen, unfoldAll } from './everyScreen';
import { chooseFile, csvFile, openApp } from './page';
import { withoutDialog } from './printing';
import { expect, test } from './quietPage';
import { smallFarm } from './smallFarm';

/** What may differ between colours; the rest of a page is the same in all of them and is looked at once. */
const rulesOfColour = ['color-contrast', 'link-in-text-block'];

type Found = Record<string, string[]>;

/** Goes through every screen with all of it unfolded, and gives what a look at each finds wrong. */
async function lookAtAll(page: Page, look: (own: string, name: string) => Promise<string[]>): Promise<Found> {
  await withoutDialog(page);
  await openApp(page);
  await chooseFile(page, csvFile('small-farm.csv', smallFarm));
  await expect(page.getByRole('heading', { level: 1 })).toContainText('Does a crowded week pay?');
  const found: Found = {};
  for (const { name, own, open } of everyScreen) {
    await open(page);
    await unfoldAll(page, own);
    const wrong = await look(own, name);
    if (wrong.length > 0) found[name] = wrong;
  }
  return found;
}

test('every screen, unfolded: axe finds nothing on it or on its paper, targets are large, pictures speak', async ({
  page,
}) => {
  test.setTimeout(300_000);
  await page.emulateMedia({ reducedMotion: 'reduce' });
  const found = await lookAtAll(page, async (own, name) => {
    // The long page of methods has a test of its own with axe.
    const onScreen = name === 'the method' ? [] : await axeFindings(page, own);
    const rest = [...(await smallTargets(page, own)), ...(await speechlessPictures(page, own))];
    await page.emulateMedia({ media: 'print' });
    const onPaper = await axeFindings(page, own, rulesOfColour);
    await page.emulateMedia({ media: null });
    return [...onScreen, ...rest, ...onPaper.map((text) => `on paper: ${text}`)];
  });
  expect(found).toEqual({});
});

test('every screen at 390 px, dark and in forced colours: axe finds nothing, targets are large', async ({ page }) => {
  test.setTimeout(300_000);
  await page.emulateMedia({ colorScheme: 'dark', reducedMotion: 'reduce' });
  await page.setViewportSize({ width: 390, height: 844 });
  const found = await lookAtAll(page, async (own, name) => {
    const dark = name === 'the method' ? [] : await axeFindings(page, own, rulesOfColour);
    const small = await smallTargets(page, own, name === 'the large watch' ? 44 : 24);
    await page.emulateMedia({ forcedColors: 'active' });
    const forced = await axeFindings(page, own, rulesOfColour);
    await page.emulateMedia({ forcedColors: null });
    return [...dark, ...small, ...forced.map((text) => `in forced colours: ${text}`)];
  });
  expect(found).toEqual({});
});

test('every screen enlarged to 200 % and 400 %: nothing beyond the sides, and room to read', async ({ page }) => {
  test.setTimeout(300_000);
  await page.emulateMedia({ reducedMotion: 'reduce' });
  // A window of 1280 by 1024 pixels, enlarged (WCAG 2.2, 1.4.10).
  await page.setViewportSize({ width: 640, height: 450 });
  const found = await lookAtAll(page, async (_own, name) => {
    const wrong: string[] = [];
    for (const [width, height] of [
      [640, 450],
      [320, 256],
    ] as const) {
      await page.setViewportSize({ width, height });
      const sides = await beyondTheSides(page);
      const covered = await coveredShare(page);
      wrong.push(...sides.map((text) => `${width} px: ${text}`));
      // The large watch is all that there is while it is open.
      if (covered > 0.5 && name !== 'the large watch')
        wrong.push(`${width} px: ${Math.round(covered * 100)} % of the window is covered`);
    }
    await page.setViewportSize({ width: 640, height: 450 });
    return wrong;
  });
  expect(found).toEqual({});
});
