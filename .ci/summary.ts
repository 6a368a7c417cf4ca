/** As much as is read of the unit runner's report. */
export interface UnitReport {
  numPassedTests: number;
  numFailedTests: number;
  numPendingTests: number;
  numTodoTests: number;
  /** A file that failed before its first test has status "failed" and no results. */
  testResults: { status: string; assertionResults: unknown[] }[];
}

/** As much as is read of the browser runner's report. */
export interface BrowserReport {
  stats: { expected: number; unexpected: number; flaky: number; skipped: number };
  /** What failed outside a test, such as the server that did not start. */
  errors: unknown[];
}

export interface Summary {
  passed: number;
  failed: number;
  skipped: number;
}

const fromUnits = (report: UnitReport): Summary => ({
  passed: report.numPassedTests,
  failed:
    report.numFailedTests +
    report.testResults.filter((file) => file.status === 'failed' && file.assertionResults.length === 0).length,
  skipped: report.numPendingTests + report.numTodoTests,
});

/** A test that passed only at its second try has failed. */
const fromBrowser = ({ stats, errors }: BrowserReport): Summary => ({
  passed: stats.expected,
  failed: stats.unexpected + stats.flaky + errors.length,
  skipped: stats.skipped,
});

/** The sum of the reports that were written; a runner that was not reached has none. */
export function summarise(units: UnitReport | undefined, browser: BrowserReport | undefined): Summary {
  const parts = [...(units ? [fromUnits(units)] : []), ...(browser ? [fromBrowser(browser)] : [])];
  const sum = (key: keyof Summary) => parts.reduce((total, part) => total + part[key], 0);
  return { passed: sum('passed'), failed: sum('failed'), skipped: sum('skipped') };
}

/** "12 passed, 0 failed", with the skipped ones where there are any. */
export const closingLine = ({ passed, failed, skipped }: Summary): string =>
  `${passed} passed, ${failed} failed${skipped > 0 ? `, ${skipped} skipped` : ''}`;

/** Tests ran in both runners, and none failed or was left out. */
export const allIsWell = (units: UnitReport | undefined, browser: BrowserReport | undefined): boolean =>
  [summarise(units, undefined), summarise(undefined, browser)].every(
    ({ passed, failed, skipped }) => passed > 0 && failed === 0 && skipped === 0,
  );
