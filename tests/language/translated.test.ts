import { expect, test } from 'vitest';
import { languageOf } from '../../src/language/catalogue';
import { speak } from '../../src/language/language';
import { translated } from '../../src/language/translated';

test('a text of data is as it is in English, and otherwise what the language has for it', () => {
  expect([translated('day', 'unit'), translated('Wage')]).toEqual(['day', 'Wage']);
  speak(languageOf('es', { endings: [], texts: { 'day ¦ unit': 'día' }, models: { Wage: 'Salario' } }));
  expect([translated('day', 'unit'), translated('day'), translated('Wage'), translated('')]).toEqual([
    'día',
    'day',
    'Salario',
    '',
  ]);
});
