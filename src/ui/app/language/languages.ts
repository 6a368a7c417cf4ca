import type { Catalogue } from '../../../language/catalogue';

/** The language in which the program is written; it needs no catalogue. */
export const writtenIn = 'en';

const files = import.meta.glob<Catalogue>('../../../language/catalogues/*.json', { import: 'default' });

const catalogues = new Map(
  Object.entries(files).map(([path, load]) => [/([\w-]+)\.json$/.exec(path)?.[1] ?? '', load] as const),
);

/** Each language's own name by its BCP 47 tag; `vite.config.ts` writes them, English and those with a catalogue. */
declare const LANGUAGE_NAMES: Readonly<Record<string, string>>;

/** The languages of the program by their tags, each with its own name. */
export const languageNames = LANGUAGE_NAMES;

/** The tags of the languages of the program. */
export const languages: readonly string[] = Object.keys(languageNames);

/** The texts of a language; undefined for the one in which the program is written. */
export async function loadCatalogue(tag: string): Promise<Catalogue | undefined> {
  return catalogues.get(tag)?.();
}
