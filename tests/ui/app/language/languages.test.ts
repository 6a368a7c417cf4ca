import { expect, test } from 'vitest';
import { languageNames, languages, loadCatalogue } from '../../../../src/ui/app/language/languages';

test('the languages are English and those that have a catalogue, each by its own name', async () => {
  expect(languages).toEqual(['en', 'es']);
  expect(languageNames).toEqual({ en: 'English', es: 'Español' });
  expect(Object.keys((await loadCatalogue('es')) ?? {})).toEqual(['endings', 'texts', 'models']);
  expect(await loadCatalogue('en')).toBeUndefined();
});
