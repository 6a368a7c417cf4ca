import { wording } from '../language/wording';
import { modelOptions, type CommandHelp, type CommandOption } from './commandHelp';
import { described, paragraph, joinedWords } from './layout';

const ofAll: readonly (readonly [term: string, does: string])[] = [
  ['--json', wording`one JSON document instead of a table`],
  ['--help', wording`this text, or that of the command before it`],
  ['--version', wording`the version of the program`],
];

function written({ name, value }: CommandOption): string {
  return value === '' ? `--${name}` : `--${name} ${value}`;
}

function terms(options: readonly CommandOption[]): string {
  const rows = options.map(
    (option) => [written(option), option.needed ? wording`${option.does} (needed)` : option.does] as const,
  );
  const column = Math.max(...[...rows, ...ofAll].map(([term]) => term.length)) + 5;
  return [...rows, ...ofAll].map(([term, does]) => described(term, does, column)).join('');
}

function form({ name, takes, options }: CommandHelp): string {
  const own = options.filter((option) => !modelOptions.includes(option));
  const words = own.map((option) => joinedWords(option.needed ? written(option) : `[${written(option)}]`));
  return [name, takes, ...words].join(' ');
}

/** The help of one command. @param program the words with which the program is started */
export function commandText(help: CommandHelp, program: string): string {
  const usage = paragraph(wording`usage: ${program} ${form(help)}`);
  const example = `  ${program} ${help.example}\n`;
  return `${usage}\n${paragraph(help.gives)}\n${wording`options`}\n${terms(help.options)}\n${wording`example`}\n${example}`;
}

/** The help of the whole program. */
export function overviewText(commands: readonly CommandHelp[], program: string): string {
  const column = Math.max(...commands.map(({ name }) => name.length)) + 5;
  const rows = commands.map(({ name, summary }) => described(name, summary, column)).join('');
  const more = paragraph(wording`What a command takes and gives: ${program} tornado --help`);
  const usage = wording`usage: ${program} COMMAND FILE [options]`;
  const ofModels = wording`options where FILE is a model, and of all commands`;
  return `${usage}\n\n${wording`commands`}\n${rows}\n${more}\n${ofModels}\n${terms(modelOptions)}`;
}
