// Edits a model in a real browser on the built site, very many times, and says whether what the page holds grows:
// npm run endure -- --edits 50000
import { parseArgs } from 'node:util';
import { chromium } from '@playwright/test';
import { preview } from 'vite';
import { findBrowser } from '../browser/findBrowser';
import { endure, perModel, type Held } from './edits';
import { slope } from './slope';

const { values } = parseArgs({ options: { edits: { type: 'string', default: '50000' } } });
const edits = Number(values.edits);
// In a long run always as many edits after a page began, as a page holds more with each that can be undone.
const every = edits >= 10 * perModel ? perModel : Math.max(10, Math.round(edits / 400) * 10);
const server = await preview({ preview: { host: '127.0.0.1', port: 0 }, logLevel: 'error' });
const executablePath = findBrowser();
const browser = await chromium.launch({ ...(executablePath !== undefined && { executablePath }) });
const page = await browser.newPage({ viewport: { width: 1440, height: 900 }, serviceWorkers: 'block' });
await page.goto(server.resolvedUrls!.local[0]!);
await page.getByRole('navigation', { name: 'Questions' }).waitFor();
const counts: Held[] = [];
console.log('  edits   heap MB    nodes  listeners  documents');
await endure(page, {
  edits,
  every,
  onHeld: (held) => {
    counts.push(held);
    const megabytes = (held.heap / 1e6).toFixed(2);
    const [nodes, listeners, documents] = [held.nodes, held.listeners, held.documents].map((n) => String(n));
    const columns = [
      String(held.edits).padStart(7),
      megabytes.padStart(9),
      nodes!.padStart(8),
      listeners!.padStart(10),
    ];
    console.log(`${columns.join(' ')} ${documents!.padStart(10)}`);
  },
});
await browser.close();
await server.close();
// The first tenth fills what is kept for good: parts that load once, and the steps of undo.
const settled = counts.slice(Math.ceil(counts.length / 10));
const by = (of: (held: Held) => number): number => slope(settled.map((held) => [held.edits / 1000, of(held)]));
console.log(`
slope a thousand edits, least squares over the last nine tenths: heap ${(by(({ heap }) => heap) / 1000).toFixed(1)} kB,
nodes ${by(({ nodes }) => nodes).toFixed(2)}, listeners ${by(({ listeners }) => listeners).toFixed(2)}`);
