import { spokenLanguage } from './language';

/** How a word for one becomes the word for several: the first pattern that it has, and what takes its place. */
export type Endings = readonly (readonly [pattern: string, replacement: string])[];

const english: Endings = [
  ['([^aeiou])y$', '$1ies'],
  ['(ea|l)f$', '$1ves'],
  ['(s|x|ch|sh)$', '$1es'],
  ['$', 's'],
];

/** The word for several by the endings of a language; the word as it is where none fits. */
export function pluralBy(endings: Endings, noun: string): string {
  const [pattern = '$', replacement = ''] = endings.find(([ending]) => new RegExp(ending).test(noun)) ?? [];
  return noun.replace(new RegExp(pattern), replacement);
}

/** The word for several in the language of the page: `board` as boards, `bench` as benches. */
export function plural(noun: string): string {
  return spokenLanguage()?.plural(noun) ?? pluralBy(english, noun);
}
