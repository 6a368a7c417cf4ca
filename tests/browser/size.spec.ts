import { gzipSync } from 'node:zlib';
import { openApp } from './page';
import { expect, test } from './quietPage';

/** Bytes of script that the first page may ask for until it rests, each file as `gzip -9` packs it. */
const budget = 150_000;

test('the first page asks for at most 150 kB of script', async ({ page }) => {
  const scripts = new Map<string, Promise<Buffer>>();
  page.on('response', (response) => {
    const { pathname } = new URL(response.url());
    if (pathname.endsWith('.js')) scripts.set(pathname, response.body());
  });
  await openApp(page);
  await page.waitForLoadState('networkidle');
  // What waits for an idle moment has come as well once nothing was asked for in a while.
  for (let before = -1; before !== scripts.size; await page.waitForTimeout(1_500)) before = scripts.size;
  const sizes = await Promise.all(
    [...scripts].map(async ([name, body]) => ({ name, bytes: gzipSync(await body, { level: 9 }).length })),
  );
  const total = sizes.reduce((sum, { bytes }) => sum + bytes, 0);
  const list = sizes.sort((a, b) => b.bytes - a.bytes).map(({ name, bytes }) => `${bytes} ${name}`);
  console.log(`${total} bytes of script:\n${list.join('\n')}`);
  expect(total, list.join('\n')).toBeLessThanOrEqual(budget);
});
