import { readdirSync, readFileSync } from 'node:fs';
import { join } from 'node:path';
import unitTable from '../../shared/units.json' with { type: 'json' };
import { parseRecords } from '../../src/files/csv';
import { textColumns } from '../../src/files/translatedFile';
import { textKey } from '../../src/language/language';
import { stageContexts, tradeStages } from '../../src/present/beds/knownStages';
import { chapters } from '../../src/present/method/chapters';
import { entryContext } from '../../src/present/method/linkTexts';
import { unitContext } from '../../src/present/text/printedUnit';

const models = join(import.meta.dirname, '../../models');

/** The files of the shipped models and trials. */
export const shippedFiles: readonly string[] = ['', 'trials'].flatMap((folder) =>
  readdirSync(join(models, folder))
    .filter((name) => name.endsWith('.csv'))
    .map((name) => join(folder, name)),
);

export function shippedText(file: string): string {
  return readFileSync(join(models, file), 'utf8');
}

function columnsOf(file: string): Map<string, string[]> {
  const [head, ...rows] = parseRecords(shippedText(file), ',');
  return new Map(head!.fields.map((name, i) => [name, rows.map(({ fields }) => fields[i] ?? '')]));
}

function textsOfFile(file: string): string[] {
  const columns = [...columnsOf(file)];
  const words = columns.flatMap(([name, fields]) => (textColumns.has(name) ? fields : []));
  const plans = columns.flatMap(([name]) => /^plan:\s*(.*)$/s.exec(name)?.[1] ?? []);
  const choices = columns.flatMap(([name, fields]) => (name === 'choices' ? fields : []));
  const labels = choices.flatMap((text) => text.split(';').map((one) => one.trim().replace(/^\S+\s+/, '')));
  // A number in a column of words, such as a step between two numbers, is the same in every language.
  return [...words, ...plans, ...labels].filter((text) => /\p{L}{2,}/u.test(text));
}

/** Everything that people read in the shipped models and trials, once each. */
export const textsOfModels: readonly string[] = [...new Set(shippedFiles.flatMap(textsOfFile))];

const inTable = new Set(unitTable.units.map(({ name }) => name));

/** The nouns in the units of the shipped models, such as `plant`. */
const nouns = new Set(
  shippedFiles
    .flatMap((file) => columnsOf(file).get('unit') ?? [])
    .flatMap((unit) => unit.match(/[a-z_]{3,}/g) ?? [])
    .filter((name) => !inTable.has(name)),
);

/** Nouns that are often counted in a grower's own model: a language should have words for them, too. */
const usual = 'head batch box crate tray person hole seedling bag place move use thousand'.split(' ');

/** How units are said, as keys of a catalogue: those of the table that are words, and nouns. */
export const textsOfUnits: readonly string[] = [
  ...unitTable.units.flatMap(({ name, said }) =>
    said === undefined ? [] : [...('many' in said ? [name, said.many] : []), said.under],
  ),
  ...new Set([...nouns, ...usual]),
].map((text) => textKey([text], unitContext));

/** The entries of the methods by their ids, as links to them are heard. */
export const textsOfMethods: readonly string[] = chapters
  .flatMap(({ entries }) => entries.map(({ id }) => id))
  .map((id) => textKey([id], entryContext));

/** The trade's names of stages, by themselves, beside the word for boards and as labels have them. */
export const textsOfStages: readonly string[] = tradeStages.flatMap((word) =>
  Object.values(stageContexts).map((context) => textKey([word], context)),
);
