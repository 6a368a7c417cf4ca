import { wording } from '../../language/wording';
import { textSum } from '../../core/checksum';
import { problem, type Problem } from '../../core/problem';
import { fromBase64, toBase64 } from '../base64';
import { cleanName, type SharedFile } from '../sharedFile';

/** A case as one live file carries it: the model, and what the one who sent it had chosen. */
export interface LiveCase {
  readonly file: SharedFile;
  /** The day on which it was made, `2031-03-09`. */
  readonly day: string;
  /** Names of the plan that is taken and of the one that is given up; blank for the usual ones. */
  readonly plan: string;
  readonly against: string;
  /** Texts of choices by their keys, as the shelf keeps them: own words, the outlay and its years, draws. */
  readonly choices: Readonly<Record<string, string>>;
  /** Where Raftmargin was when it made the file; blank from the command line, and where that is not on the web. */
  readonly address: string;
}

const format = 1;

/** An address of the web, or blank: it becomes a link, and a place on a machine is nobody's business. */
function webAddress(text: string): string {
  return /^https?:\/\/[^\s"<>]+$/.test(text) ? text : '';
}

/** The case as the JSON text of a data block in HTML: it holds no `<`. */
export function liveCaseText({ file, address, ...rest }: LiveCase): string {
  const model = toBase64(file.bytes);
  const of = { name: cleanName(file.name), model, sum: textSum([model]), address: webAddress(address) };
  const data = { format, ...of, ...rest };
  return JSON.stringify(data).replaceAll('<', '\\u003c');
}

function damaged(what: string): { readonly problem: Problem } {
  return { problem: problem('live-case-damaged', wording`${what} Ask for the file once more.`) };
}

const notWhole = damaged(wording`damaged file: the model in it is not whole.`);
const changed = damaged(wording`changed file: the model in it is not the one that was sent.`);
const newer = damaged(
  wording`file of a newer program: this one cannot read it. Open it as a page, and save its model there.`,
);

function textOf(data: Readonly<Record<string, unknown>>, key: string): string {
  const value = data[key];
  return typeof value === 'string' ? value : '';
}

function textsOf(value: unknown): Record<string, string> {
  const entries = typeof value === 'object' && value !== null ? Object.entries(value) : [];
  return Object.fromEntries(entries.filter((entry): entry is [string, string] => typeof entry[1] === 'string'));
}

function dataIn(json: string): Readonly<Record<string, unknown>> | undefined {
  try {
    const data: unknown = JSON.parse(json);
    return typeof data === 'object' && data !== null ? { ...data } : undefined;
  } catch {
    return undefined;
  }
}

/** The case in such a text, or why there is none. Never throws. */
export function readLiveCase(json: string): LiveCase | { readonly problem: Problem } {
  const data = dataIn(json);
  if (data === undefined) return notWhole;
  if (data['format'] !== format)
    return typeof data['format'] === 'number' && data['format'] > format ? newer : notWhole;
  const model = textOf(data, 'model');
  const bytes = fromBase64(model);
  if (bytes === undefined) return notWhole;
  if (textSum([model]) !== data['sum']) return changed;
  return {
    file: { name: cleanName(textOf(data, 'name')), bytes },
    day: textOf(data, 'day'),
    plan: textOf(data, 'plan'),
    against: textOf(data, 'against'),
    choices: textsOf(data['choices']),
    address: webAddress(textOf(data, 'address')),
  };
}
