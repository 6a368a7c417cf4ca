import type { Page } from '@playwright/test';

/** What a page showed, and when: the text of the field typed into, or the model's title. */
export interface Typed {
  readonly what: 'wage' | 'title';
  readonly text: string;
  /** Milliseconds since 1970, by the page's clock, which is the machine's. */
  readonly at: number;
}

const mark = 'typed here';

/** Runs in the page: says what is typed as soon as the page's own handlers have run, and each new title. */
function sayWhatIsTyped(start: string): void {
  const say = (what: string, text: string): void =>
    console.debug(`${start} ${JSON.stringify({ what, text, at: Date.now() })}`);
  addEventListener('input', ({ target }) => {
    if (target instanceof HTMLInputElement && target.closest('.entry') !== null) say('wage', target.value);
  });
  addEventListener('DOMContentLoaded', () => {
    new MutationObserver(() => {
      const title = document.querySelector('h1')?.textContent ?? '';
      if (title !== '' && title !== document.body.dataset['saidTitle']) say('title', title);
      document.body.dataset['saidTitle'] = title;
    }).observe(document.body, { childList: true, characterData: true, subtree: true });
  });
}

/** Notes what is typed into a page from now on. */
export async function listenToTyping(page: Page): Promise<readonly Typed[]> {
  const all: Typed[] = [];
  page.on('console', (message) => {
    const text = message.text();
    if (text.startsWith(mark)) all.push(JSON.parse(text.slice(mark.length)) as Typed);
  });
  // The program that runs these scripts wraps each named function in this one, which a page lacks.
  await page.addInitScript('globalThis.__name = (made) => made;');
  await page.addInitScript(sayWhatIsTyped, mark);
  return all;
}
