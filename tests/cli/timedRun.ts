import { runCommand } from '../../src/cli/run';
import { machineWith } from './machine';

/** What `time` says of a trials file. */
export function timed(file: string, words: string) {
  const bytes = new TextEncoder().encode(file);
  const found = runCommand(
    ['time', 'trials.csv', ...words.split(' ').filter(Boolean)],
    machineWith(() => bytes),
  );
  const documents = found.output.startsWith('[') ? (JSON.parse(found.output) as Record<string, unknown>[]) : [];
  return { ...found, documents };
}
