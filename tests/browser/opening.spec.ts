import type { Page } from '@playwright/test';
import { openApp } from './page';
import { expect, test } from './quietPage';

/** Addresses of files that the page as it comes asks for, and of those that it lists for later. */
async function askedFor(page: Page): Promise<Record<'scripts' | 'styles' | 'fonts' | 'later', string[]>> {
  const text = await (await page.request.get('/')).text();
  return page.evaluate((html) => {
    const parsed = new DOMParser().parseFromString(html, 'text/html');
    const addresses = (root: ParentNode, what: string): string[] =>
      [...root.querySelectorAll(what)].map((one) => one.getAttribute('href') ?? one.getAttribute('src') ?? '');
    return {
      scripts: addresses(parsed, 'script, link[rel=modulepreload]'),
      styles: addresses(parsed, 'link[rel=stylesheet]'),
      fonts: addresses(parsed, 'link[as=font]'),
      later: addresses(parsed.querySelector('template')!.content, 'link'),
    };
  }, text);
}

const about = 'What a plant costs, what the beds can carry';

test('its first frame waits for one style and two small scripts, and what follows is listed', async ({ page }) => {
  await openApp(page);
  const asked = await askedFor(page);
  expect(asked.styles).toEqual([expect.stringMatching(/index-.*\.css$/)]);
  expect(asked.scripts.map((address) => /(\w+)-[^/]+\.js$/.exec(address)?.[1])).toEqual(['index', 'language']);
  expect(asked.fonts).toEqual([]);
  for (const part of ['engine-', 'parser-', 'start-', '.css']) {
    expect(
      asked.later.some((address) => address.includes(part)),
      part,
    ).toBe(true);
  }
  for (const address of asked.later) expect((await page.request.get(address)).ok(), address).toBe(true);
});

test('each part is asked for once', async ({ page }) => {
  const requests: string[] = [];
  page.on('request', (request) => requests.push(new URL(request.url()).pathname));
  await openApp(page);
  await page.waitForLoadState('networkidle');
  expect(requests.filter((one, i) => requests.indexOf(one) !== i && !one.endsWith('.svg'))).toEqual([]);
  expect(requests.filter((one) => one.endsWith('.csv'))).toHaveLength(1);
});

test.describe('before anything else has come', () => {
  test.use({ colorScheme: 'dark' });

  async function openHeld(page: Page): Promise<() => void> {
    let go = (): void => undefined;
    const held = new Promise<void>((free) => (go = free));
    await page.route(/\/(?:engine|parser)-/, async (route) => {
      await held;
      await route.continue();
    });
    await page.goto('/');
    await expect(page.getByText(about)).toBeVisible();
    return go;
  }

  const paper = (page: Page): Promise<string> =>
    page.evaluate(() => getComputedStyle(document.documentElement).backgroundColor);

  test('the page says what it is about, as dark as the system', async ({ page }) => {
    const go = await openHeld(page);
    await expect(page.locator('.entry')).toHaveCount(0);
    const before = await paper(page);
    expect(before).toBe('rgb(24, 26, 22)');
    go();
    await expect(page.locator('.entry').first()).toBeVisible();
    expect(await paper(page)).toBe(before);
  });

  test('the page asks for its two fonts, so that the rows are laid out once', async ({ page }) => {
    const go = await openHeld(page);
    const fonts = (): Promise<number> =>
      page.evaluate(
        () => performance.getEntriesByType('resource').filter(({ name }) => name.endsWith('.woff2')).length,
      );
    await expect.poll(fonts).toBe(2);
    go();
    await expect(page.locator('.entry').first()).toBeVisible();
    expect(await fonts()).toBe(2);
  });

  test('or as light as the person chose', async ({ page }) => {
    await page.addInitScript(() => localStorage.setItem('raftmargin scheme', 'light'));
    const go = await openHeld(page);
    expect(await paper(page)).toBe('rgb(250, 246, 236)');
    go();
    await expect(page.locator('.entry').first()).toBeVisible();
  });
});

test('nothing that stands on a phone moves while the rows come', async ({ page }) => {
  await page.setViewportSize({ width: 412, height: 823 });
  await page.addInitScript(() => {
    new PerformanceObserver((list) => {
      const shifts = list.getEntries() as unknown as { value: number }[];
      const sum = Number(document.documentElement.dataset['moved'] ?? 0);
      document.documentElement.dataset['moved'] = String(shifts.reduce((all, { value }) => all + value, sum));
    }).observe({ type: 'layout-shift', buffered: true });
  });
  await openApp(page);
  await expect(page.locator('.rows-to-come')).toHaveCount(0);
  await expect(page.locator('details.group[hidden]')).toHaveCount(0);
  await page.waitForTimeout(500);
  expect(Number(await page.evaluate(() => document.documentElement.dataset['moved'] ?? 0))).toBeLessThan(0.01);
});
