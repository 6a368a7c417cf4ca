import type { LanguageTexts } from '../../../language/catalogue';
import { speak, spokenLanguage } from '../../../language/language';

let texts: LanguageTexts | undefined;

/** The language of a locale: `es` for `es-MX`. */
export function languageOfLocale(locale: string): string {
  return (locale.split(/[-_]/)[0] ?? '').toLowerCase();
}

/**
 * Says all texts of the page in a language. Whatever makes texts is to be loaded after that.
 * @returns once texts can be made
 */
export async function speakOnPage(language: LanguageTexts): Promise<void> {
  const { languageOf } = await import('../../../language/catalogue');
  speak(languageOf(language.tag, language.catalogue));
  document.documentElement.lang = language.tag;
  texts = language;
}

/** The texts of the page, for what is made beside it, such as a worker; undefined in English. */
export function pageTexts(): LanguageTexts | undefined {
  return texts;
}

/**
 * The locale by which the page writes numbers and days: the browser's own of the page's language, if it has one. A page
 * in English may stand in for a language that the program lacks: it writes them as the browser's first language does.
 */
export function pageLocale(): string {
  const tag = spokenLanguage()?.tag;
  if (tag === undefined) return navigator.language;
  return navigator.languages.find((locale) => languageOfLocale(locale) === tag) ?? tag;
}
