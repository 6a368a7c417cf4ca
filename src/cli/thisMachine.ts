import { existsSync, readFileSync, writeFileSync } from 'node:fs';
import { resolve } from 'node:path';
import { livePageName } from '../files/live/livePageName';
import { spokenLanguage } from '../language/language';
import { wording } from '../language/wording';
import { dayOf } from '../present/text/dates';
import type { Machine } from './machine';
import { programFile } from './programFile';
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

/** The page of a live case in the language of the command, where it has been built. */
function livePage(): string | undefined {
  const name = livePageName(spokenLanguage()?.tag);
  return programFile(`./${name}`, `../../command/${name}`);
}

const machine: Machine = {
  program: isFromSources ? 'npm run --silent cli --' : 'raftmargin',
  readFile: (path) => readFileSync(placeOf(path)),
  isThere: (path) => existsSync(fromThere(path)),
  writeFile: (path, text) => writeFileSync(fromThere(path), text),
  livePage,
  today: () => dayOf(new Date()),
};

/** Runs one command on this machine, and has its result written. @param words the words after the program's name */
export function runHere(words: readonly string[]): void {
  const { output, messages, status } = runCommand(words, machine);
  // A reader such as head may close its end early; that is no fault of the command.
  process.stdout.on('error', ({ code, message }: NodeJS.ErrnoException) => {
    if (code === 'EPIPE') return;
    process.stderr.write(wording`output not written: ${message}. Write it to another place.\n`);
    process.exitCode = outputFailed;
  });
  process.exitCode = status;
  process.stderr.write(messages);
  process.stdout.write(output);
}
