import { expect, test } from 'vitest';
import { languageName, languages, loadCatalogue } from '../../../../src/ui/app/language/languages';

test('the languages are English and those that have a catalogue, each by its own name', async () => {
  expect(languages).toEqual(['en', 'es']);
  expect(languages.map(languageName)).toEqual(['English', 'Español']);
  expect(Object.keys((await loadCatalogue('es')) ?? {})).toEqual(['endings', 'texts', 'models']);
  expect(await loadCatalogue('en')).toBeUndefined();
});
