import { chosenLanguage } from './chosenLanguage';
import { loadCatalogue } from './languages';
import { speakOnPage } from './pageLanguage';

/**
 * Says all texts of the page in the language that the person or the browser chose. One that cannot be had leaves them
 * in English.
 * @returns once texts can be made
 */
export async function startLanguage(): Promise<void> {
  const tag = chosenLanguage();
  try {
    const catalogue = await loadCatalogue(tag);
    if (catalogue !== undefined) await speakOnPage({ tag, catalogue });
  } catch {
    // Offline before the language was ever loaded: the page stands in English.
  }
}
