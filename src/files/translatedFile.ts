import { translated } from '../language/translated';
import { formatRecord, parseRecords } from './csv';

/** The columns of models and of timed trials that hold words for people. */
export const textColumns: ReadonlySet<string> = new Set(['label', 'note', 'source', 'group', 'step', 'worker', 'way']);

const planHead = /^(plan:\s*)(.*)$/s;
const choice = /^(\s*\S+\s+)(.*?)(\s*)$/s;

/** `1 whole boards; 0 balanced flow` with its words in the language of the page. */
function translatedChoices(text: string): string {
  return text
    .split(';')
    .map((one) =>
      one.replace(choice, (_one, number: string, words: string, end: string) => number + translated(words) + end),
    )
    .join(';');
}

function translatedField(text: string, column: string): string {
  if (column === 'choices') return translatedChoices(text);
  return textColumns.has(column) ? translated(text) : text;
}

/**
 * A file that comes with the program, a model or timed trials, with its labels, notes, sources, headings, choices and
 * names of plans in the language of the page. Its numbers, formulas, names and units stay as they are, and so does all
 * of it in English.
 * @param text with commas, a header and a line feed after each record
 */
export function translatedFile(text: string): string {
  const [head, ...rows] = parseRecords(text, ',');
  if (head === undefined) return text;
  const header = head.fields.map((name) =>
    name.replace(planHead, (_name, mark: string, plan: string) => mark + translated(plan)),
  );
  const records = rows.map(({ fields, raw }) => {
    const said = fields.map((field, i) => translatedField(field, head.fields[i] ?? ''));
    return said.every((field, i) => field === fields[i]) ? raw : formatRecord(said, ',', '\n');
  });
  return [formatRecord(header, ',', '\n'), ...records].join('');
}
