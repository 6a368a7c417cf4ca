import { expect, test as base, type Page } from '@playwright/test';

/** What Playwright writes where it keeps a page from registering its service worker. */
const blockedWorker = 'Service Worker registration blocked by Playwright';

function listen(page: Page, origin: string): Set<string> {
  const complaints = new Set<string>();
  page.on('pageerror', (error) => complaints.add(`uncaught: ${error.message}`));
  page.on('console', (message) => {
    if (message.text() === blockedWorker) return;
    if (message.type() === 'error' || message.type() === 'warning') complaints.add(`console: ${message.text()}`);
  });
  page.on('request', (request) => {
    const url = new URL(request.url());
    if (url.protocol.startsWith('http') && url.origin !== origin) complaints.add(`left the machine: ${url.href}`);
  });
  return complaints;
}

/** Runs in the page: a breach of its policy that the page's own code catches is said all the same. */
function reportBreaches(): void {
  addEventListener('securitypolicyviolation', ({ violatedDirective, blockedURI }) => {
    console.error(`policy: ${violatedDirective} refuses ${blockedURI}`);
  });
}

interface Quiet {
  /** What the page complained of so far; a test that expects a complaint takes it out of here. */
  complaints: Set<string>;
}

/**
 * A browser test whose page must be silent: an uncaught error, an error or warning in the console (a breach of the
 * content security policy is one) or a request to another host fails the test at its end.
 */
export const test = base.extend<Quiet>({
  complaints: [
    async ({ page, baseURL }, use) => {
      const complaints = listen(page, new URL(baseURL ?? page.url()).origin);
      await page.addInitScript(reportBreaches);
      await use(complaints);
      expect([...complaints]).toEqual([]);
    },
    { auto: true },
  ],
});

export { expect };
