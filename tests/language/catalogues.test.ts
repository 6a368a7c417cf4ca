import { readdirSync, readFileSync } from 'node:fs';
import { join } from 'node:path';
import { IntlMessageFormat } from 'intl-messageformat';
import { describe, expect, test } from 'vitest';
import type { Catalogue } from '../../src/language/catalogue';
import { textsOfMethods, textsOfModels, textsOfStages, textsOfUnits } from './dataTexts';
import { textsOfProgram } from './sources';

const folder = join(import.meta.dirname, '../../src/language/catalogues');
const catalogues = readdirSync(folder).map(
  (name) => [name.replace(/\.json$/, ''), JSON.parse(readFileSync(join(folder, name), 'utf8')) as Catalogue] as const,
);
const program = textsOfProgram();
const programKeys = [...new Set(program.map(({ key }) => key)), ...textsOfUnits, ...textsOfMethods, ...textsOfStages];
const partsOf = new Map(program.map(({ key, parts }) => [key, parts.length]));

/** The places of a text, read as ICU MessageFormat: {0}, {1} …, those inside plurals too. */
function placesOf(text: string, tag: string): string[] {
  const found = new Set<string>();
  const visit = (elements: readonly object[]): void => {
    for (const element of elements) {
      if ('options' in element || ('value' in element && 'type' in element && element.type === 1)) {
        found.add((element as unknown as { value: string }).value);
      }
      const options = 'options' in element ? Object.values(element.options as Record<string, { value: object[] }>) : [];
      options.forEach(({ value }) => visit(value));
    }
  };
  visit(new IntlMessageFormat(text, tag, undefined, { ignoreTag: true }).getAst());
  return [...found].sort();
}

test('there is a language beside English', () => expect(catalogues.map(([tag]) => tag)).toContain('es'));

describe.each(catalogues)('the texts of %s', (tag, { texts, models, endings }) => {
  test('no text of the program is without one, and there is none that the program does not say', () => {
    const at = new Map(program.map(({ key, at: place }) => [key, place]));
    const missing = programKeys.filter((key) => !(key in texts)).map((key) => `${at.get(key) ?? 'data'}: ${key}`);
    expect({ missing, unused: Object.keys(texts).filter((key) => !programKeys.includes(key)) }).toEqual({
      missing: [],
      unused: [],
    });
  });

  test('no text of the shipped models is without one, and there is none that they do not have', () => {
    const missing = textsOfModels.filter((text) => !(text in models));
    expect({ missing, unused: Object.keys(models).filter((text) => !textsOfModels.includes(text)) }).toEqual({
      missing: [],
      unused: [],
    });
  });

  test('each has the places of the English one, and no other', () => {
    const wrong = Object.entries(texts).filter(([key, text]) => {
      const places = Array.from({ length: partsOf.get(key) ?? 0 }, (_, i) => String(i)).sort();
      return placesOf(text, tag).join() !== places.join();
    });
    expect(wrong).toEqual([]);
  });

  test('none is blank, and space at an end is as in English', () => {
    const ends = (text: string): string => `${/^\s*/.exec(text)![0]}|${/\s*$/.exec(text)![0]}`;
    const wrong = [...Object.entries(texts), ...Object.entries(models)].filter(
      ([key, text]) => text.trim() === '' || ends(text) !== ends(key.replace(/ ¦ .*$/s, '')),
    );
    expect(wrong).toEqual([]);
  });

  test('a text of the models and the program is the same in both', () => {
    expect(Object.entries(models).filter(([text, said]) => (texts[text] ?? said) !== said)).toEqual([]);
  });

  test('every word has one for several', () => {
    expect(endings.at(-1)?.[0]).toBe('$');
    for (const [pattern] of endings) expect(() => new RegExp(pattern)).not.toThrow();
  });
});
