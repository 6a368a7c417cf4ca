// Closes .ci/run: one line that sums both test runners, and status 1 unless all tests ran and passed.
import { existsSync, readFileSync } from 'node:fs';
import { allIsWell, closingLine, summarise, type BrowserReport, type UnitReport } from './summary';

const read = (name: string): unknown => {
  const file = `.cache/reports/${name}.json`;
  return existsSync(file) ? JSON.parse(readFileSync(file, 'utf8')) : undefined;
};

const units = read('unit') as UnitReport | undefined;
const browser = read('browser') as BrowserReport | undefined;
if (units === undefined) console.log('The unit tests were not reached.');
if (browser === undefined) console.log('The browser tests were not reached.');
process.exitCode = allIsWell(units, browser) ? 0 : 1;
console.log(closingLine(summarise(units, browser)));
