import { existsSync } from 'node:fs';
import { posix, win32 } from 'node:path';
import { chromium } from '@playwright/test';

/** The part of a machine that decides which browser the tests run in. */
export interface Machine {
  platform: NodeJS.Platform;
  env: Record<string, string | undefined>;
  exists: (file: string) => boolean;
  /** Where Playwright would put a browser of its own, downloaded or not. */
  download: string;
}

const thisMachine = (): Machine => ({
  platform: process.platform,
  env: process.env,
  exists: existsSync,
  download: chromium.executablePath(),
});

const COMMANDS = ['chromium', 'chromium-browser', 'google-chrome', 'google-chrome-stable', 'microsoft-edge'];

const MAC_APPLICATIONS = ['Chromium', 'Google Chrome', 'Microsoft Edge'];

const WINDOWS_PROGRAMS = [
  'Chromium\\Application\\chrome.exe',
  'Google\\Chrome\\Application\\chrome.exe',
  'Microsoft\\Edge\\Application\\msedge.exe',
];

function installed({ platform, env }: Machine): string[] {
  if (platform === 'darwin') return MAC_APPLICATIONS.map((name) => `/Applications/${name}.app/Contents/MacOS/${name}`);
  if (platform === 'win32') {
    const roots = ['PROGRAMFILES', 'PROGRAMFILES(X86)', 'LOCALAPPDATA'].flatMap((name) => env[name] ?? []);
    return WINDOWS_PROGRAMS.flatMap((program) => roots.map((root) => win32.join(root, program)));
  }
  const folders = (env['PATH'] ?? '').split(':').filter((folder) => folder !== '');
  return COMMANDS.flatMap((command) => folders.map((folder) => posix.join(folder, command)));
}

/**
 * The path of the browser to test in: the one that CHROMIUM_PATH names, else an installed Chromium, Chrome or Edge,
 * else Playwright's own download; undefined where there is none. Throws where CHROMIUM_PATH names no file.
 */
export function findBrowser(machine: Machine = thisMachine()): string | undefined {
  const named = machine.env['CHROMIUM_PATH'];
  if (named === undefined || named === '') return [...installed(machine), machine.download].find(machine.exists);
  if (!machine.exists(named)) throw new Error(`CHROMIUM_PATH names no file: ${named}. Correct it or unset it.`);
  return named;
}
