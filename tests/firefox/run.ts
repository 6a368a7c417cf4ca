// Walks through the built site in Firefox, by WebDriver BiDi:
// npm run firefox -- --with node_modules/puppeteer-core/lib/esm/puppeteer/puppeteer-core.js
import { existsSync } from 'node:fs';
import { resolve } from 'node:path';
import { parseArgs } from 'node:util';
import { openSite } from '../browser/siteServer';
import { startFirefox } from './driver';
import { walk } from './walk';

const { values } = parseArgs({ options: { with: { type: 'string', default: 'puppeteer-core' } } });
const folders = (process.env['PATH'] ?? '').split(':');
const installed = folders.flatMap((folder) => [`${folder}/firefox`, `${folder}/firefox-esr`]).find(existsSync);
const program = process.env['FIREFOX_PATH'] ?? installed;
const library = existsSync(values.with) ? resolve(values.with) : values.with;
const browser = program === undefined ? undefined : await startFirefox(library, program);
if (program === undefined) console.log('Skipped: no Firefox found. Install it, or name it in FIREFOX_PATH.');
else if (browser === undefined) console.log('Skipped: no puppeteer-core. npm install --no-save puppeteer-core@24');
else {
  console.log(await browser.version());
  const site = await openSite('dist');
  const page = await browser.newPage();
  const errors: string[] = [];
  page.on('pageerror', ({ message }) => errors.push(message ?? 'an error'));
  await page.setViewport({ width: 1440, height: 900 });
  await page.goto(site.address);
  await page.waitForSelector('.entry input[type=text]');
  const steps = await walk(page, resolve('models/density-lesson.csv'), async () => {
    site.turnOff();
    await Promise.resolve();
  });
  await browser.close();
  await site.close();
  for (const { what, fault } of steps)
    console.log(`${fault === '' ? 'passed' : 'FAILED'}: ${what}${fault && `: ${fault}`}`);
  for (const error of errors) console.log(`error on the page: ${error}`);
  if (errors.length > 0 || steps.some(({ fault }) => fault !== '')) process.exitCode = 1;
}
