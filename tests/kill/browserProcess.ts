import { spawn } from 'node:child_process';
import { readFileSync, rmSync } from 'node:fs';
import { join } from 'node:path';
import { setTimeout as pause } from 'node:timers/promises';
import { chromium, type BrowserContext } from '@playwright/test';
import { findBrowser } from '../browser/findBrowser';

/** A browser in a process group of its own, which can be killed as a power cut would. */
export interface KillableBrowser {
  readonly context: BrowserContext;
  /** Kills every process of the browser at once; gives the time of the kill, in milliseconds since 1970. */
  readonly kill: () => Promise<number>;
}

const words = [
  '--headless=new',
  '--no-sandbox',
  '--remote-debugging-port=0',
  '--no-first-run',
  '--disable-background-networking',
  '--disable-component-update',
  '--disable-sync',
  // A window that is not in front must go on as one that is: both are typed into.
  '--disable-renderer-backgrounding',
  '--disable-background-timer-throttling',
  '--disable-backgrounding-occluded-windows',
  'about:blank',
];

/** The port on which the browser listens, which it writes into its profile. */
async function portOf(profile: string): Promise<string> {
  for (let i = 0; i < 400; i += 1) {
    try {
      const [port = ''] = readFileSync(join(profile, 'DevToolsActivePort'), 'utf8').split('\n');
      if (port !== '') return port;
    } catch {
      // Not written yet.
    }
    await pause(50);
  }
  throw new Error('the browser did not start');
}

/** Starts the browser of the browser tests on a profile that outlasts it. */
export async function startBrowser(profile: string): Promise<KillableBrowser> {
  rmSync(join(profile, 'DevToolsActivePort'), { force: true });
  const program = findBrowser();
  if (program === undefined) throw new Error('no browser found: see the browser tests');
  const child = spawn(program, [`--user-data-dir=${profile}`, ...words], { detached: true, stdio: 'ignore' });
  const ended = new Promise<void>((done) => child.once('exit', () => done()));
  const browser = await chromium.connectOverCDP(`http://127.0.0.1:${await portOf(profile)}`);
  const [context] = browser.contexts();
  if (context === undefined) throw new Error('the browser has no window');
  return {
    context,
    kill: async () => {
      const at = Date.now();
      process.kill(-child.pid!, 'SIGKILL');
      await ended;
      await browser.close().catch(() => undefined);
      return at;
    },
  };
}
