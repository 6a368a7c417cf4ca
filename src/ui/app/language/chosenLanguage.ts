import { readText, writeText } from '../preferences/textStorage';
import { languages, writtenIn } from './languages';
import { languageOfLocale } from './pageLanguage';

const key = 'raftmargin language';

/** Keeps the choice for all pages of the program on this machine; false where the browser refuses storage. */
export function rememberLanguage(tag: string): boolean {
  return writeText('localStorage', key, tag);
}

/** The language for the page: the one chosen, else the first of the browser's that the program has. */
export function chosenLanguage(): string {
  const kept = readText('localStorage', key);
  const chosen = languages.find((tag) => tag === kept);
  const wished = navigator.languages.map(languageOfLocale);
  return chosen ?? wished.find((tag) => languages.includes(tag)) ?? writtenIn;
}
