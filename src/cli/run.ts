import type { Problem } from '../core/problem';
import { readModel } from '../files/readModel';
import { readArguments, type Arguments } from './arguments';
import { breakevenCommand } from './breakevenCommand';
import { budgetCommand } from './budgetCommand';
import { evaluateCommand } from './evaluateCommand';
import { gridCommand } from './gridCommand';
import { jsonFault, type Outcome } from './outcome';
import { riskCommand } from './riskCommand';
import { scheduleCommand } from './scheduleCommand';
import { openSession, type Session } from './session';
import { switchingCommand } from './switchingCommand';
import { tornadoCommand } from './tornadoCommand';
import { usage, UsageError } from './usage';

/** What a run of the program leaves behind. */
export interface Finished {
  readonly output: string;
  readonly messages: string;
  /** 0 done, 1 the model or its result is at fault, 2 wrong usage. */
  readonly status: 0 | 1 | 2;
}

interface Command {
  readonly options: readonly string[];
  run(session: Session, given: Arguments): Outcome;
}

const commands: ReadonlyMap<string, Command> = new Map([
  ['evaluate', { options: [], run: evaluateCommand }],
  ['tornado', { options: ['result'], run: tornadoCommand }],
  ['breakeven', { options: ['result', 'input', 'target', 'from', 'to'], run: breakevenCommand }],
  ['switching', { options: ['result', 'target'], run: switchingCommand }],
  ['grid', { options: ['result', 'across', 'down', 'steps'], run: gridCommand }],
  ['risk', { options: ['result', 'draws', 'seed', 'target'], run: riskCommand }],
  ['budget', { options: [], run: budgetCommand }],
  ['schedule', { options: [], run: scheduleCommand }],
]);

const optionsOf = new Map([...commands].map(([name, { options }]) => [name, options]));

function refusal(error: unknown): Finished {
  if (error instanceof UsageError) return { output: '', messages: `${error.message}\n\n${usage}`, status: 2 };
  throw error;
}

/**
 * Runs one command.
 * @param words the words after the program's name
 * @param readFile gives a file's bytes, or throws where there is no such file
 */
export function runCommand(words: readonly string[], readFile: (path: string) => Uint8Array): Finished {
  try {
    const given = readArguments(words, optionsOf);
    return finish(given, bytesOf(given.file, readFile));
  } catch (error) {
    return refusal(error);
  }
}

function bytesOf(path: string, readFile: (path: string) => Uint8Array): Uint8Array {
  try {
    return readFile(path);
  } catch {
    throw new UsageError(`file not readable: ${path}. Check its name and place.`);
  }
}

function finish(given: Arguments, bytes: Uint8Array): Finished {
  const { model: opened, refused } = readModel(bytes);
  const found = [...opened.faults, ...opened.notices];
  if (refused) return { output: document(given, {}, opened.faults), messages: inLines(found), status: 1 };
  const session = openSession(opened, given);
  const outcome = (commands.get(given.command) as Command).run(session, given);
  const status = session.faults.length === 0 && session.checksHold && outcome.computed ? 0 : 1;
  const output = given.json ? document(given, outcome.document, session.faults) : outcome.table;
  return { output, messages: inLines([...found, ...(outcome.said ?? [])]), status };
}

function inLines(problems: readonly Problem[]): string {
  return problems.map(({ message, where }) => `row ${where.row}: ${message}\n`).join('');
}

function document(given: Arguments, found: Outcome['document'], faults: Session['faults']): string {
  return given.json ? `${JSON.stringify({ ...found, faults: faults.map(jsonFault) }, null, 2)}\n` : '';
}
