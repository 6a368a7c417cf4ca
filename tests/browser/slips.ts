import type { Page } from '@playwright/test';

/** Words that come of a number or text that is not there, and two full stops in a row that are no three dots. */
const slips = /\bNaN\b|Infinity|∞|\bundefined\b|\bnull\b|\[object|(?<![.…])\.\.(?!\.)|\be[+-]?\d{2,}\b/;

/** What people see or hear of the page, once it has not changed for a moment. */
export async function settledText(page: Page): Promise<string> {
  return page.evaluate(async () => {
    const text = (): string => {
      const named = [...document.querySelectorAll('[aria-label], [title]')].map((element) =>
        [element.getAttribute('aria-label'), element.getAttribute('title')].join('\n'),
      );
      return [document.body.innerText, ...named].join('\n');
    };
    const begun = performance.now();
    let last = text();
    let since = begun;
    while (performance.now() - since < 120 && performance.now() - begun < 1500) {
      await new Promise((resolve) => setTimeout(resolve, 30));
      const now = text();
      if (now === last) continue;
      last = now;
      since = performance.now();
    }
    return last;
  });
}

/** Lines in which such a word stands. */
export function slipsIn(text: string): string[] {
  return text.split('\n').filter((line) => slips.test(line));
}
