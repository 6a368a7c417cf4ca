import { describe, expect, test } from 'vitest';
import { findBrowser, type Machine } from './browser/findBrowser';

const machine = (files: string[], rest: Partial<Machine> = {}): Machine => ({
  platform: 'linux',
  env: { PATH: '/opt/bin:/usr/bin' },
  exists: (file) => files.includes(file),
  download: '/cache/chrome',
  ...rest,
});

describe('the browser of the tests is', () => {
  test('the one that CHROMIUM_PATH names, before an installed one', () => {
    const env = { PATH: '/usr/bin', CHROMIUM_PATH: '/mine/chromium' };
    expect(findBrowser(machine(['/mine/chromium', '/usr/bin/chromium'], { env }))).toBe('/mine/chromium');
  });

  test('Chromium before Chrome before Edge, wherever on the path', () => {
    const all = ['/opt/bin/microsoft-edge', '/opt/bin/google-chrome', '/usr/bin/chromium'];
    expect(findBrowser(machine(all))).toBe('/usr/bin/chromium');
    expect(findBrowser(machine(all.slice(0, 2)))).toBe('/opt/bin/google-chrome');
  });

  test('an application on a Mac, a program on Windows', () => {
    const chrome = '/Applications/Google Chrome.app/Contents/MacOS/Google Chrome';
    expect(findBrowser(machine([chrome], { platform: 'darwin' }))).toBe(chrome);
    const edge = 'C:\\Program Files (x86)\\Microsoft\\Edge\\Application\\msedge.exe';
    const env = { 'PROGRAMFILES(X86)': 'C:\\Program Files (x86)' };
    expect(findBrowser(machine([edge], { platform: 'win32', env }))).toBe(edge);
  });

  test("Playwright's own where none is installed", () => {
    expect(findBrowser(machine(['/cache/chrome']))).toBe('/cache/chrome');
  });

  test('missing where there is none at all', () => {
    expect(findBrowser(machine([]))).toBeUndefined();
  });
});

test('a CHROMIUM_PATH without a file is a fault, not a reason to take another', () => {
  const env = { PATH: '/usr/bin', CHROMIUM_PATH: '/gone' };
  expect(() => findBrowser(machine(['/usr/bin/chromium'], { env }))).toThrow('CHROMIUM_PATH names no file: /gone');
});
