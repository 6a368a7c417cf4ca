// @vitest-environment jsdom
import { afterEach, expect, test, vi } from 'vitest';
import { keepScheme, keptScheme, showScheme } from '../../../../src/ui/app/preferences/shownScheme';

const shown = (): string | undefined => document.documentElement.dataset['scheme'];

afterEach(() => {
  localStorage.clear();
  vi.unstubAllGlobals();
});

test.each([
  ['system', true, 'dark'],
  ['system', false, 'light'],
  ['light', true, 'light'],
  ['dark', false, 'dark'],
] as const)('of %s, where the system is dark: %s, the page shows %s', (scheme, isSystemDark, expected) => {
  showScheme(scheme, isSystemDark);
  expect(shown()).toBe(expected);
});

test('the kept scheme is shown without being named, and the system decides where none is kept', () => {
  vi.stubGlobal('matchMedia', () => ({ matches: true }));
  showScheme();
  expect(shown()).toBe('dark');
  keepScheme('light');
  expect(keptScheme()).toBe('light');
  showScheme();
  expect(shown()).toBe('light');
});

test('what is kept and no scheme is not taken for one', () => {
  localStorage.setItem('raftmargin scheme', 'purple');
  expect(keptScheme()).toBe('system');
});
