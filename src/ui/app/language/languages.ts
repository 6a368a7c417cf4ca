import type { Catalogue } from '../../../language/catalogue';

/** The language in which the program is written; it needs no catalogue. */
export const writtenIn = 'en';

const files = import.meta.glob<Catalogue>('../../../language/catalogues/*.json', { import: 'default' });

const catalogues = new Map(
  Object.entries(files).map(([path, load]) => [/([\w-]+)\.json$/.exec(path)?.[1] ?? '', load] as const),
);

/** The languages of the program, as BCP 47 tags. */
export const languages: readonly string[] = [writtenIn, ...catalogues.keys()];

/** A language's own name: `English`, `Español`. */
export function languageName(tag: string): string {
  const name = new Intl.DisplayNames([tag], { type: 'language' }).of(tag) ?? tag;
  return name.slice(0, 1).toLocaleUpperCase(tag) + name.slice(1);
}

/** The texts of a language; undefined for the one in which the program is written. */
export async function loadCatalogue(tag: string): Promise<Catalogue | undefined> {
  return catalogues.get(tag)?.();
}
