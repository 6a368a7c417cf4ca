import type { Problem } from '../core/problem';
import { readModel } from '../files/readModel';
import { modelOptions, readArguments, type Arguments } from './arguments';
import { breakevenCommand } from './breakevenCommand';
import { budgetCommand } from './budgetCommand';
import { evaluateCommand } from './evaluateCommand';
import { gridCommand } from './gridCommand';
import { inLines, jsonFault, jsonText, type Finished, type Outcome } from './outcome';
import { riskCommand } from './riskCommand';
import { scheduleCommand } from './scheduleCommand';
import { openSession, unknownToday, type Session } from './session';
import { switchingCommand } from './switchingCommand';
import { timeCommand } from './timeCommand';
import { tornadoCommand } from './tornadoCommand';
import { usage, UsageError } from './usage';

type Study = (session: Session, given: Arguments) => Outcome;

interface Command {
  /** The options that it takes besides `--json`. */
  readonly options: readonly string[];
  run(given: Arguments, bytes: Uint8Array): Finished;
}

const commands: ReadonlyMap<string, Command> = new Map([
  ['evaluate', ofModel([], evaluateCommand)],
  ['tornado', ofModel(['result'], tornadoCommand)],
  ['breakeven', ofModel(['result', 'input', 'target', 'from', 'to'], breakevenCommand)],
  ['switching', ofModel(['result', 'target'], switchingCommand)],
  ['grid', ofModel(['result', 'across', 'down', 'steps'], gridCommand)],
  ['risk', ofModel(['result', 'draws', 'seed', 'target'], riskCommand)],
  ['budget', ofModel([], budgetCommand)],
  ['schedule', ofModel([], scheduleCommand)],
  ['time', { options: ['step', 'allowance', 'allowance-of', 'within', 'confidence'], run: timeCommand }],
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
    return (commands.get(given.command) as Command).run(given, bytesOf(given.file, readFile));
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

/** A command whose file is a model, with the options that all of these take. */
function ofModel(options: readonly string[], study: Study): Command {
  return { options: [...modelOptions, ...options], run: (given, bytes) => studied(given, bytes, study) };
}

function studied(given: Arguments, bytes: Uint8Array, study: Study): Finished {
  const { model: opened, refused } = readModel(bytes);
  const found = [...opened.faults, ...opened.notices];
  if (refused) return { output: document(given, {}, opened.faults), messages: inLines(found), status: 1 };
  const session = openSession(opened, given);
  const outcome = study(session, given);
  const status = session.faults.length === 0 && session.unmet.length === 0 && outcome.computed ? 0 : 1;
  const output = given.json ? document(given, outcome.document, session.faults) : outcome.table;
  const said = [...found, ...(outcome.said ?? []), ...unknownToday(session, given.options['result']), ...session.unmet];
  return { output, messages: inLines(said), status };
}

function document(given: Arguments, found: Outcome['document'], faults: readonly Problem[]): string {
  return given.json ? jsonText({ ...found, faults: faults.map(jsonFault) }) : '';
}
