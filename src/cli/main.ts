import { existsSync, readFileSync } from 'node:fs';
import { resolve } from 'node:path';
import { runCommand } from './run';

/** A file named on the command line: seen from where the person stands, which npm says, else from here. */
function placeOf(path: string): string {
  const standing = resolve(process.env['INIT_CWD'] ?? '.', path);
  return existsSync(standing) ? standing : path;
}

const { output, messages, status } = runCommand(process.argv.slice(2), (path) => readFileSync(placeOf(path)));
process.stderr.write(messages);
process.stdout.write(output);
process.exitCode = status;
