import { languages, writtenIn } from './languages';
import { languageOfLocale } from './pageLanguage';

const key = 'raftmargin language';

/** The language that the person chose on this machine; undefined without one, or where the browser refuses storage. */
function remembered(): string | undefined {
  try {
    const kept = localStorage.getItem(key);
    return languages.find((tag) => tag === kept);
  } catch {
    return undefined;
  }
}

/** Keeps the choice for all pages of the program on this machine; false where the browser refuses storage. */
export function rememberLanguage(tag: string): boolean {
  try {
    localStorage.setItem(key, tag);
    return true;
  } catch {
    return false;
  }
}

/** The language for the page: the one chosen, else the first of the browser's that the program has. */
export function chosenLanguage(): string {
  const wished = navigator.languages.map(languageOfLocale);
  return remembered() ?? wished.find((tag) => languages.includes(tag)) ?? writtenIn;
}
