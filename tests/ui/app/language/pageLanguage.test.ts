// @vitest-environment jsdom
import { afterEach, expect, test, vi } from 'vitest';
import { wording } from '../../../../src/language/wording';
import { pageLocale, pageTexts, speakOnPage } from '../../../../src/ui/app/language/pageLanguage';

function wish(first: string, ...others: string[]): void {
  vi.spyOn(navigator, 'language', 'get').mockReturnValue(first);
  vi.spyOn(navigator, 'languages', 'get').mockReturnValue([first, ...others]);
}

afterEach(() => vi.restoreAllMocks());

test('a page in English writes numbers as the browser’s first language does', () => {
  wish('de-AT', 'en-GB');
  expect(pageLocale()).toBe('de-AT');
});

test('a page in another language says its texts, its language, and writes numbers as the browser writes that one', async () => {
  const catalogue = { endings: [], texts: { Stop: 'Detener' }, models: {} };
  expect(pageTexts()).toBeUndefined();
  await speakOnPage({ tag: 'es', catalogue });
  expect([wording`Stop`, document.documentElement.lang, pageTexts()]).toEqual([
    'Detener',
    'es',
    { tag: 'es', catalogue },
  ]);
  wish('en-GB', 'es-MX');
  expect(pageLocale()).toBe('es-MX');
  wish('en-GB');
  expect(pageLocale()).toBe('es');
});
