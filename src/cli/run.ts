import { wording } from '../language/wording';
import { version } from '../../package.json';
import { problem, type Problem } from '../core/problem';
import { liveCaseIn } from '../files/live/liveFile';
import { readModel } from '../files/readModel';
import { commandNamed, readArguments, requestIn, wantsJson, type Arguments, type Request } from './arguments';
import { breakevenCommand, breakevenHelp } from './breakevenCommand';
import { budgetCommand, budgetHelp } from './budgetCommand';
import { checkCommand, checkHelp } from './checkCommand';
import type { CommandHelp } from './commandHelp';
import { enterpriseCommand, enterpriseHelp } from './enterpriseCommand';
import { evaluateCommand, evaluateHelp } from './evaluateCommand';
import { gridCommand, gridHelp } from './gridCommand';
import { formulasCommand, formulasTopic, helpHelp } from './helpCommand';
import { commandText, overviewText } from './helpText';
import type { Machine } from './machine';
import { inLines, jsonFault, jsonText, type Finished, type Outcome } from './outcome';
import { paybackCommand, paybackHelp } from './paybackCommand';
import { reportCommand, reportHelp, type ReadFile } from './reportCommand';
import { riskCommand, riskHelp } from './riskCommand';
import { scheduleCommand, scheduleHelp } from './scheduleCommand';
import { openSession, unknownToday, type Session } from './session';
import { switchingCommand, switchingHelp } from './switchingCommand';
import { timeCommand, timeHelp } from './timeCommand';
import { tornadoCommand, tornadoHelp } from './tornadoCommand';
import { UsageError } from './usage';

type Study = (session: Session, given: Arguments, read: ReadFile, machine: Machine) => Outcome;

interface Command {
  readonly help: CommandHelp;
  run(given: Arguments, machine: Machine): Finished;
}

const commands: readonly Command[] = [
  ofModel(evaluateHelp, evaluateCommand),
  ofModel(tornadoHelp, tornadoCommand),
  ofModel(breakevenHelp, breakevenCommand),
  ofModel(switchingHelp, switchingCommand),
  ofModel(gridHelp, gridCommand),
  ofModel(riskHelp, riskCommand),
  ofModel(scheduleHelp, scheduleCommand),
  ofModel(budgetHelp, budgetCommand),
  ofModel(enterpriseHelp, enterpriseCommand),
  ofModel(paybackHelp, paybackCommand),
  ofModel(reportHelp, reportCommand),
  ofFile(checkHelp, (given, { bytes }) => checkCommand(given, bytes)),
  ofFile(timeHelp, (given, { bytes }) => timeCommand(given, bytes)),
  { help: helpHelp, run: helpOn },
];

const byName = new Map(commands.map((command) => [command.help.name, command]));
const helpByName = new Map(commands.map(({ help }) => [help.name, help]));

/** Runs one command. @param words the words after the program's name */
export function runCommand(words: readonly string[], machine: Machine): Finished {
  try {
    const request = requestIn(words, helpByName);
    if (request !== undefined) return { output: answer(request, machine), messages: '', status: 0 };
    const given = readArguments(words, helpByName);
    return (byName.get(given.command) as Command).run(given, machine);
  } catch (error) {
    return refusal(error, words, machine);
  }
}

function answer(request: Request, { program }: Machine): string {
  if (request.of === 'version') return `${version}\n`;
  if (request.command === undefined) return overviewText([...helpByName.values()], program);
  return commandText(commandNamed(request.command, helpByName), program);
}

/** The words of `help` with a topic: the formulas, or a command. */
function helpOn(given: Arguments, { program }: Machine): Finished {
  if (given.file === formulasTopic) return formulasCommand(given);
  const command = helpByName.get(given.file);
  if (command !== undefined) return { output: commandText(command, program), messages: '', status: 0 };
  const topics = [formulasTopic, ...helpByName.keys()].join(', ');
  throw new UsageError(wording`no help on that: ${given.file}. There is help on ${topics}.`);
}

function refusal(error: unknown, words: readonly string[], { program }: Machine): Finished {
  if (!(error instanceof UsageError)) throw error;
  const faults = [problem('usage', error.message)].map(jsonFault);
  const named = helpByName.get(words[0] ?? '');
  const help = named === undefined ? overviewText([...helpByName.values()], program) : commandText(named, program);
  return {
    output: wantsJson(words) ? jsonText({ faults }) : '',
    messages: `${error.message}\n\n${help}`,
    status: 2,
  };
}

/** A command that is given a file's bytes; of a live page, those of the model in it. */
function ofFile(help: CommandHelp, run: (given: Arguments, file: NamedBytes, machine: Machine) => Finished): Command {
  return {
    help,
    run: (given, machine) => {
      const file = fileOf(given.file, machine);
      if (!('problem' in file)) return run(given, file, machine);
      return { output: document(given, {}, [file.problem]), messages: inLines([file.problem]), status: 1 };
    },
  };
}

interface NamedBytes {
  /** The path, or the name of the model's file in a live page. */
  readonly path: string;
  readonly bytes: Uint8Array;
}

function fileOf(path: string, { readFile }: Machine): NamedBytes | { readonly problem: Problem } {
  const bytes = bytesOf(path, readFile);
  const live = liveCaseIn(bytes);
  if (live === undefined || 'problem' in live) return live ?? { path, bytes };
  return { path: live.file.name, bytes: live.file.bytes };
}

function bytesOf(path: string, readFile: Machine['readFile']): Uint8Array {
  try {
    return readFile(path);
  } catch {
    throw new UsageError(wording`file not readable: ${path}. Check its name and place.`);
  }
}

/** A command whose file is a model that has to be sound enough for a study. */
function ofModel(help: CommandHelp, study: Study): Command {
  return ofFile(help, (given, file, machine) =>
    studied(given, { ...file, opened: readModel(file.bytes) }, machine, study),
  );
}

function studied(given: Arguments, read: ReadFile, machine: Machine, study: Study): Finished {
  const { model: opened, refused } = read.opened;
  const found = [...opened.faults, ...opened.notices];
  if (refused) return { output: document(given, {}, opened.faults), messages: inLines(found), status: 1 };
  const session = openSession(opened, given);
  const outcome = study(session, given, read, machine);
  const status = session.faults.length === 0 && session.unmet.length === 0 && outcome.computed ? 0 : 1;
  const output = given.json ? document(given, outcome.document, session.faults) : outcome.table;
  const said = [...found, ...(outcome.said ?? []), ...unknownToday(session, given.options['result']), ...session.unmet];
  return { output, messages: inLines(said), status };
}

function document(given: Arguments, found: Outcome['document'], faults: readonly Problem[]): string {
  return given.json ? jsonText({ ...found, faults: faults.map(jsonFault) }) : '';
}
