// Runs every bench in this folder, or those whose name holds a word of the command line, one after another: in Node,
// and those of what a page does many times in Chromium as well.
import { readdirSync } from 'node:fs';
import { runInBrowser } from './inBrowser';

const alsoInBrowser = ['evaluate.bench.ts', 'risk.bench.ts', 'studies.bench.ts'];

const words = process.argv.slice(2);
const benches = readdirSync(import.meta.dirname)
  .filter((file) => file.endsWith('.bench.ts'))
  .filter((file) => words.length === 0 || words.some((word) => file.includes(word)))
  .sort();

if (benches.length === 0) {
  console.error(`No bench found${words.length > 0 ? `: ${words.join(' ')}` : ''}.`);
  process.exitCode = 1;
}
console.log(`Node ${process.version}, ${process.platform} ${process.arch}`);
for (const bench of benches) await import(`./${bench}`);
const inBrowser = benches.filter((file) => alsoInBrowser.includes(file));
if (inBrowser.length > 0) await runInBrowser(inBrowser);
