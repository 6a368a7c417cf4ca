// Asks Lighthouse for its opinion of the built site, as on a phone, and fails below the aims of `scores.ts`:
// npm run lighthouse -- --runs 3 --slowdown 4
import { spawn } from 'node:child_process';
import { mkdtempSync, readFileSync, rmSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { parseArgs } from 'node:util';
import { preview } from 'vite';
import { findBrowser } from '../browser/findBrowser';
import { aims, median, scoreOf, shortOf, type Report } from './scores';

/** Pinned, and fetched when it is wanted: with all that it needs it is larger than everything else together. */
const lighthouse = 'lighthouse@12.8.2';

const metrics = [
  'first-contentful-paint',
  'largest-contentful-paint',
  'total-blocking-time',
  'cumulative-layout-shift',
  'speed-index',
];

const { values } = parseArgs({
  options: {
    runs: { type: 'string', default: '3' },
    // How many times slower the phone is than this machine. Lighthouse's 4 is for one of index 1500 to 2000.
    slowdown: { type: 'string', default: '4' },
    with: { type: 'string' },
  },
});
const folder = mkdtempSync(join(tmpdir(), 'lighthouse-'));

/** One run; `--with` names an installed copy of Lighthouse, for machines without a network. */
async function run(address: string): Promise<Report> {
  const output = join(folder, 'report.json');
  const [program, first] = values.with === undefined ? ['npx', ['--yes', lighthouse]] : [values.with, []];
  const phone = ['--form-factor=mobile', `--throttling.cpuSlowdownMultiplier=${values.slowdown}`];
  const words = ['--quiet', '--output=json', `--output-path=${output}`, ...phone];
  const flags = '--chrome-flags=--headless=new --no-sandbox --disable-background-networking';
  const env = { ...process.env, CHROME_PATH: findBrowser() ?? '' };
  const child = spawn(program, [...first, address, ...words, flags], { env, stdio: ['ignore', 'ignore', 'inherit'] });
  const code = await new Promise<number | null>((ended) => child.once('close', ended));
  if (code !== 0) throw new Error(`Lighthouse ended with ${code}`);
  return JSON.parse(readFileSync(output, 'utf8')) as Report;
}

const server = await preview({ preview: { host: '127.0.0.1', port: 0 }, logLevel: 'error' });
const reports: Report[] = [];
for (let i = 0; i < Number(values.runs); i += 1) {
  const report = await run(server.resolvedUrls!.local[0]!);
  reports.push(report);
  const scores = Object.keys(aims).map((category) => `${category} ${scoreOf(report, category)}`);
  const times = metrics.map((metric) => `${report.audits[metric]?.title} ${report.audits[metric]?.displayValue}`);
  const machine = `index of the machine ${report.environment.benchmarkIndex}, slowed down ${values.slowdown} times`;
  console.log(`run ${i + 1}: ${scores.join(', ')}\n  ${times.join(', ')}\n  ${machine}`);
}
await server.close();
rmSync(folder, { recursive: true });
const last = reports.at(-1);
const weak = Object.values(last?.audits ?? {}).filter(({ score }) => score !== null && score < 0.9);
console.log('below 0.9 in the last run:');
for (const { title, score, displayValue } of weak) console.log(`  ${score} ${title} ${displayValue ?? ''}`);
const middle = Object.keys(aims).map((category) => {
  return `${category} ${median(reports.map((report) => scoreOf(report, category)))}`;
});
console.log(`median of ${reports.length}: ${middle.join(', ')}`);
const short = shortOf(reports);
for (const one of short) console.error(`below the aim: ${one}`);
if (short.length > 0) process.exitCode = 1;
