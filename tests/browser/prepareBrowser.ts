// Makes sure that there is a browser to test in, and says what it does about it.
import { spawnSync } from 'node:child_process';
import { existsSync } from 'node:fs';
import { findBrowser } from './findBrowser';

function run(command: string, ...words: string[]): boolean {
  console.log(`> ${[command, ...words].join(' ')}`);
  const env = { ...process.env, DEBIAN_FRONTEND: 'noninteractive' };
  const shell = process.platform === 'win32';
  return spawnSync(command, words, { stdio: ['ignore', 'inherit', 'inherit'], env, shell }).status === 0;
}

function installFromDebian(): boolean {
  const debianAsRoot = existsSync('/etc/debian_version') && process.getuid?.() === 0;
  return (
    debianAsRoot &&
    run('apt-get', 'update', '-qq') &&
    run('apt-get', 'install', '-y', '-qq', '--no-install-recommends', 'chromium')
  );
}

function installOne(): string | undefined {
  console.log('No Chromium, Chrome or Edge found: installing one for the browser tests.');
  if (!installFromDebian()) run('npx', 'playwright', 'install', 'chromium');
  return findBrowser();
}

const browser = findBrowser() ?? installOne();
if (browser === undefined) {
  console.error('No browser could be installed: install Chromium, or set CHROMIUM_PATH to the path of one.');
  process.exitCode = 1;
} else {
  console.log(`Browser for the tests: ${browser}`);
}
