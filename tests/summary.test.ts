import { expect, test } from 'vitest';
import { allIsWell, closingLine, summarise, type BrowserReport, type UnitReport } from '../.ci/summary';

const units = (rest: Partial<UnitReport> = {}): UnitReport => ({
  numPassedTests: 10,
  numFailedTests: 0,
  numPendingTests: 0,
  numTodoTests: 0,
  testResults: [],
  ...rest,
});

const browser = (stats: Partial<BrowserReport['stats']> = {}, errors: unknown[] = []): BrowserReport => ({
  stats: { expected: 3, unexpected: 0, flaky: 0, skipped: 0, ...stats },
  errors,
});

const line = (...reports: Parameters<typeof summarise>) => closingLine(summarise(...reports));
const broken = { status: 'failed', assertionResults: [] };

test('both runners are summed', () => {
  expect(line(units(), browser())).toBe('13 passed, 0 failed');
  expect(allIsWell(units(), browser())).toBe(true);
});

test.each([
  ['a failed unit test', units({ numFailedTests: 1 }), browser(), '13 passed, 1 failed'],
  ['a file that does not load', units({ testResults: [broken] }), browser(), '13 passed, 1 failed'],
  ['a skipped unit test', units({ numPendingTests: 1 }), browser(), '13 passed, 0 failed, 1 skipped'],
  ['a planned unit test', units({ numTodoTests: 2 }), browser(), '13 passed, 0 failed, 2 skipped'],
  ['a failed browser test', units(), browser({ unexpected: 2 }), '13 passed, 2 failed'],
  ['a browser test that needed two tries', units(), browser({ flaky: 1 }), '13 passed, 1 failed'],
  ['a skipped browser test', units(), browser({ skipped: 1 }), '13 passed, 0 failed, 1 skipped'],
  ['a server that did not start', units(), browser({ expected: 0 }, ['refused']), '10 passed, 1 failed'],
  ['no browser tests', units(), undefined, '10 passed, 0 failed'],
  ['no tests at all', undefined, undefined, '0 passed, 0 failed'],
  ['empty runs', units({ numPassedTests: 0 }), browser(), '3 passed, 0 failed'],
])('%s is not well', (_what, unitReport, browserReport, text) => {
  expect(line(unitReport, browserReport)).toBe(text);
  expect(allIsWell(unitReport, browserReport)).toBe(false);
});
