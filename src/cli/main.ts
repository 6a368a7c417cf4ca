import { existsSync, readFileSync } from 'node:fs';
import { resolve } from 'node:path';
import { runCommand } from './run';

/** Exit status where a result was there but could not be written. */
const outputFailed = 1;

/** A file named on the command line: seen from where the person stands, which npm says, else from here. */
function placeOf(path: string): string {
  const standing = resolve(process.env['INIT_CWD'] ?? '.', path);
  return existsSync(standing) ? standing : path;
}

const { output, messages, status } = runCommand(process.argv.slice(2), (path) => readFileSync(placeOf(path)));
// A reader such as head may close its end early; that is no fault of the command.
process.stdout.on('error', ({ code, message }: NodeJS.ErrnoException) => {
  if (code === 'EPIPE') return;
  process.stderr.write(`output not written: ${message}. Write it to another place.\n`);
  process.exitCode = outputFailed;
});
process.exitCode = status;
process.stderr.write(messages);
process.stdout.write(output);
