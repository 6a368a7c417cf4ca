// @vitest-environment jsdom
import { afterEach, describe, expect, it, test, vi } from 'vitest';
import { chosenLanguage, rememberLanguage } from '../../../../src/ui/app/language/chosenLanguage';

function wish(...locales: string[]): void {
  vi.spyOn(navigator, 'languages', 'get').mockReturnValue(locales);
}

afterEach(() => {
  vi.restoreAllMocks();
  localStorage.clear();
});

describe('without a choice, the first of the browser’s languages that the program has', () => {
  test.each([
    [['es-MX', 'en'], 'es'],
    [['de-AT', 'es', 'en'], 'es'],
    [['en-US', 'es'], 'en'],
    // As Chromium writes the locale C.
    [['en-US@posix'], 'en'],
    [['pt-BR'], 'en'],
    [[], 'en'],
  ])('%j', (locales, tag) => {
    wish(...locales);
    expect(chosenLanguage()).toBe(tag);
  });
});

it('is the one that was chosen, while the program has it', () => {
  wish('en-GB');
  expect(rememberLanguage('es')).toBe(true);
  expect(chosenLanguage()).toBe('es');
  rememberLanguage('tlh');
  expect(chosenLanguage()).toBe('en');
});

it('is the browser’s where the browser keeps nothing', () => {
  wish('es-ES');
  const refuse = (): never => {
    throw new Error('refused');
  };
  vi.spyOn(Storage.prototype, 'getItem').mockImplementation(refuse);
  vi.spyOn(Storage.prototype, 'setItem').mockImplementation(refuse);
  expect([rememberLanguage('en'), chosenLanguage()]).toEqual([false, 'es']);
});
