import { wording } from '../language/wording';
import { existsSync, readFileSync, writeFileSync } from 'node:fs';
import { resolve } from 'node:path';
import { dayOf } from '../present/text/dates';
import type { Machine } from './machine';
import { runCommand } from './run';

/** Exit status where a result was there but could not be written. */
const outputFailed = 1;

/** Whether npm started the program from its own folder, and not from where the person stands. */
const isFromSources = process.env['npm_lifecycle_event'] === 'cli';

/** A place named on the command line, seen from where the person stands. */
function fromThere(path: string): string {
  return resolve((isFromSources && process.env['INIT_CWD']) || '.', path);
}

/** A file named on the command line: seen from where the person stands, else from here. */
function placeOf(path: string): string {
  const standing = fromThere(path);
  return existsSync(standing) ? standing : path;
}

/** The page of a live case stands beside the built program; the sources find it where it is built. */
const livePages = ['./live-page.html', '../../command/live-page.html'].map((path) => new URL(path, import.meta.url));

const machine: Machine = {
  program: isFromSources ? 'npm run --silent cli --' : 'raftmargin',
  readFile: (path) => readFileSync(placeOf(path)),
  isThere: (path) => existsSync(fromThere(path)),
  writeFile: (path, text) => writeFileSync(fromThere(path), text),
  livePage: () => {
    const page = livePages.find((place) => existsSync(place));
    return page && readFileSync(page, 'utf8');
  },
  today: () => dayOf(new Date()),
};

const { output, messages, status } = runCommand(process.argv.slice(2), machine);
// A reader such as head may close its end early; that is no fault of the command.
process.stdout.on('error', ({ code, message }: NodeJS.ErrnoException) => {
  if (code === 'EPIPE') return;
  process.stderr.write(wording`output not written: ${message}. Write it to another place.\n`);
  process.exitCode = outputFailed;
});
process.exitCode = status;
process.stderr.write(messages);
process.stdout.write(output);
