import { wording } from '../language/wording';
import { parseArgs } from 'node:util';
import { nearest } from '../core/nearest';
import type { CommandHelp } from './commandHelp';
import { UsageError } from './usage';

/** What was asked for, before any file is read. */
export interface Arguments {
  readonly command: string;
  readonly file: string;
  readonly json: boolean;
  readonly plan: string | undefined;
  readonly against: string | undefined;
  readonly set: readonly string[];
  /** The command's own options that take no value and were given. */
  readonly flags: ReadonlySet<string>;
  /** The command's own options, as typed. */
  readonly options: Readonly<Record<string, string | undefined>>;
}

type Commands = ReadonlyMap<string, CommandHelp>;

/** What the words ask of the program itself rather than of a command. */
export type Request = { readonly of: 'version' } | { readonly of: 'help'; readonly command: string | undefined };

const ofAll = { json: { type: 'boolean' }, help: { type: 'boolean' }, version: { type: 'boolean' } } as const;

/** Every option that any command takes. */
function known(commands: Commands): Readonly<Record<string, { type: 'string' | 'boolean'; multiple?: boolean }>> {
  const options = [...commands.values()].flatMap((command) => command.options);
  const types = options.map(({ name, value }) => {
    const type =
      value === '' ? ({ type: 'boolean' } as const) : ({ type: 'string', multiple: name === 'set' } as const);
    return [name, type] as const;
  });
  return { ...Object.fromEntries(types), ...ofAll };
}

/** A negative number after an option is its value, not another option. */
function joinNegatives(words: readonly string[]): string[] {
  return words.reduce<string[]>((joined, word) => {
    const before = joined.at(-1) ?? '';
    const isValue = /^-[\d.]/.test(word) && /^--[a-z-]+$/.test(before);
    return isValue ? [...joined.slice(0, -1), `${before}=${word}`] : [...joined, word];
  }, []);
}

/** Whether help or the version is asked for, which comes before whatever else is said. */
export function requestIn(words: readonly string[], commands: Commands): Request | undefined {
  const lenient = { args: joinNegatives(words), options: known(commands), allowPositionals: true, strict: false };
  const { values, positionals } = parseArgs(lenient);
  const [command, topic] = positionals;
  if (values['help'] === true) return { of: 'help', command };
  if (values['version'] === true) return { of: 'version' };
  return command === 'help' && topic === undefined ? { of: 'help', command: undefined } : undefined;
}

/** Whether one JSON document is wanted, as far as the words can be read. */
export function wantsJson(words: readonly string[]): boolean {
  return words.includes('--json');
}

/**
 * Reads the words after the program's name.
 * @throws UsageError for anything that is not a command, its file and its options
 */
export function readArguments(words: readonly string[], commands: Commands): Arguments {
  const { values, positionals } = parsed(words, commands);
  const [name = '', file, ...rest] = positionals;
  const command = commandNamed(name, commands);
  if (file === undefined) throw new UsageError(wording`file missing: name a file after the command.`);
  if (rest.length > 0) throw new UsageError(wording`too many words: ${rest.join(' ')}. Give one file.`);
  const foreign = Object.keys(values).find((option) => !isOptionOf(command, option));
  if (foreign !== undefined) throw new UsageError(wording`option not for ${name}: --${foreign}. Leave it out.`);
  const texts = Object.entries(values).filter((entry): entry is [string, string] => typeof entry[1] === 'string');
  const { plan, against, ...options }: Arguments['options'] = Object.fromEntries(texts);
  const set = [values['set'] ?? []].flat().map(String);
  const flags = new Set(Object.keys(values).filter((option) => values[option] === true));
  return { command: name, file, json: values['json'] === true, plan, against, set, flags, options };
}

/**
 * The command of a name.
 * @throws UsageError for a name that none has
 */
export function commandNamed(name: string, commands: Commands): CommandHelp {
  const command = commands.get(name);
  if (command !== undefined) return command;
  const names = [...commands.keys()].join(', ');
  throw new UsageError(
    name === ''
      ? wording`command not known: none given. Use ${names}.`
      : wording`command not known: ${name}. Use ${names}.`,
  );
}

function isOptionOf({ options }: CommandHelp, name: string): boolean {
  return name in ofAll || options.some((option) => option.name === name);
}

/** Whether an option takes no value. */
function isFlag(name: string, commands: Commands): boolean {
  return known(commands)[name]?.type === 'boolean';
}

/** What is wrong with options, in the words of this program. */
function reasonOf(error: unknown, words: readonly string[], commands: Commands): string {
  const { code, message } = error as { readonly code?: string; readonly message: string };
  const [, named = ''] = /'(--?[^\s='<,]+)/.exec(message) ?? [];
  if (code === 'ERR_PARSE_ARGS_UNKNOWN_OPTION') {
    const near = nearest(named.replace(/^-+/, ''), Object.keys(known(commands)));
    return near === undefined
      ? wording`option not known: ${named}. Leave it out.`
      : wording`option not known: ${named}. Did you mean --${near}?`;
  }
  if (code === 'ERR_PARSE_ARGS_INVALID_OPTION_VALUE') {
    return isFlag(named.slice(2), commands)
      ? wording`option without a value: ${named}. Write it alone.`
      : wording`option without its value: ${named}. Write one after it.`;
  }
  return wording`options not readable: ${words.join(' ')}. Write them as below.`;
}

function parsed(words: readonly string[], commands: Commands) {
  try {
    return parseArgs({ args: joinNegatives(words), options: known(commands), allowPositionals: true, strict: true });
  } catch (error) {
    throw new UsageError(reasonOf(error, words, commands));
  }
}
