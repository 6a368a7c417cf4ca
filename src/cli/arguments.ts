import { parseArgs } from 'node:util';
import { nearest } from '../core/nearest';
import { UsageError } from './usage';

/** What was asked for, before any file is read. */
export interface Arguments {
  readonly command: string;
  readonly file: string;
  readonly json: boolean;
  readonly plan: string | undefined;
  readonly against: string | undefined;
  readonly set: readonly string[];
  /** The command's own options, as typed. */
  readonly options: Readonly<Record<string, string | undefined>>;
}

const text = { type: 'string' } as const;
const known = {
  json: { type: 'boolean', default: false },
  plan: text,
  against: text,
  set: { type: 'string', multiple: true },
  result: text,
  input: text,
  target: text,
  from: text,
  to: text,
  across: text,
  down: text,
  steps: text,
  draws: text,
  seed: text,
  step: text,
  allowance: text,
  'allowance-of': text,
  within: text,
  confidence: text,
} as const;

/** The options of every command that takes a model. */
export const modelOptions = ['plan', 'against', 'set'];

/** A negative number after an option is its value, not another option. */
function joinNegatives(words: readonly string[]): string[] {
  return words.reduce<string[]>((joined, word) => {
    const before = joined.at(-1) ?? '';
    const isValue = /^-[\d.]/.test(word) && /^--[a-z-]+$/.test(before);
    return isValue ? [...joined.slice(0, -1), `${before}=${word}`] : [...joined, word];
  }, []);
}

/**
 * Reads the words after the program's name.
 * @param optionsOf the options that each command takes besides `--json`
 * @throws UsageError for anything that is not a command, its file and its options
 */
export function readArguments(words: readonly string[], optionsOf: ReadonlyMap<string, readonly string[]>): Arguments {
  const { values, positionals } = parsed(words);
  const [command = '', file, ...rest] = positionals;
  const allowed = optionsOf.get(command);
  if (allowed === undefined) {
    throw new UsageError(`command not known: ${command || 'none given'}. Use ${[...optionsOf.keys()].join(', ')}.`);
  }
  if (file === undefined) throw new UsageError('file missing: name a file after the command.');
  if (rest.length > 0) throw new UsageError(`too many words: ${rest.join(' ')}. Give one file.`);
  const foreign = Object.keys(values).find((name) => name !== 'json' && !allowed.includes(name));
  if (foreign !== undefined) throw new UsageError(`option not for ${command}: --${foreign}. Leave it out.`);
  const { json, plan, against, set = [], ...options } = values;
  return { command, file, json, plan, against, set, options };
}

/** What is wrong with options, in the words of this program. */
function reasonOf(error: unknown, words: readonly string[]): string {
  const { code, message } = error as { readonly code?: string; readonly message: string };
  const [, named = ''] = /'(--?[^\s='<,]+)/.exec(message) ?? [];
  if (code === 'ERR_PARSE_ARGS_UNKNOWN_OPTION') {
    const near = nearest(named.replace(/^-+/, ''), Object.keys(known));
    return `option not known: ${named}. ${near === undefined ? 'Leave it out.' : `Did you mean --${near}?`}`;
  }
  if (code === 'ERR_PARSE_ARGS_INVALID_OPTION_VALUE') {
    return named === '--json'
      ? 'option without a value: --json. Write it alone.'
      : `option without its value: ${named}. Write one after it.`;
  }
  return `options not readable: ${words.join(' ')}. Write them as below.`;
}

function parsed(words: readonly string[]) {
  try {
    return parseArgs({ args: joinNegatives(words), options: known, allowPositionals: true, strict: true });
  } catch (error) {
    throw new UsageError(reasonOf(error, words));
  }
}
