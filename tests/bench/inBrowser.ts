import { readFileSync } from 'node:fs';
import { chromium } from '@playwright/test';
import { build, type Plugin } from 'vite';
import { findBrowser } from '../browser/findBrowser';

const shipped = new URL('../../models/transplant-hire.csv', import.meta.url);

/** Stands in for reading the shipped model from a disk, which a page has not. */
function shippedAtHand(): Plugin {
  const text = JSON.stringify(readFileSync(shipped, 'utf8'));
  return {
    name: 'shipped-at-hand',
    enforce: 'pre',
    resolveId: (id) => (id === 'node:fs' ? '\0shipped' : undefined),
    load: (id) => (id === '\0shipped' ? `export const readFileSync = () => ${text};` : undefined),
  };
}

async function bundled(bench: string): Promise<string> {
  const entry = new URL(`./${bench}`, import.meta.url).pathname;
  const made = await build({
    configFile: false,
    logLevel: 'error',
    plugins: [shippedAtHand()],
    build: { write: false, minify: false, target: 'esnext', lib: { entry, formats: ['es'], fileName: 'bench' } },
  });
  const [first] = [made].flat();
  const chunk = first !== undefined && 'output' in first ? first.output[0] : undefined;
  if (chunk === undefined) throw new Error(`no bundle of ${bench}`);
  return chunk.code;
}

/** Runs benches in the browser of the browser tests and passes on what they print; a bench that throws throws here. */
export async function runInBrowser(benches: readonly string[]): Promise<void> {
  const executablePath = findBrowser();
  const browser = await chromium.launch(executablePath === undefined ? {} : { executablePath });
  try {
    console.log(`\nChromium ${browser.version()}`);
    for (const bench of benches) {
      const page = await browser.newPage();
      page.on('console', (message) => console.log(message.text()));
      const code = await bundled(bench);
      await page.evaluate(async (text) => {
        const url = URL.createObjectURL(new Blob([text], { type: 'text/javascript' }));
        await import(url);
      }, code);
      await page.close();
    }
  } finally {
    await browser.close();
  }
}
