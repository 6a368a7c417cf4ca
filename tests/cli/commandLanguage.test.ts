import { describe, expect, test } from 'vitest';
import { commandLanguage } from '../../src/cli/commandLanguage';

describe('the language of the environment', () => {
  test.each([
    [{ LANG: 'es_MX.UTF-8' }, 'es'],
    [{ LANG: 'es_ES@euro' }, 'es'],
    [{ LANG: 'es' }, 'es'],
    [{ LC_ALL: 'en_GB.UTF-8', LANG: 'es_MX.UTF-8' }, 'en'],
    [{ LC_ALL: '', LC_MESSAGES: 'es_MX', LANG: 'en_GB' }, 'es'],
    [{ LANG: 'C.UTF-8' }, 'en'],
    [{ LANG: 'POSIX' }, 'en'],
    [{ LANG: '../es' }, 'en'],
    [{}, 'en'],
  ])('%j', (environment, tag) => expect(commandLanguage(['check', 'farm.csv'], environment)).toBe(tag));
});

test('what programs read is in English everywhere', () => {
  expect(commandLanguage(['check', 'farm.csv', '--json'], { LANG: 'es_MX.UTF-8' })).toBe('en');
});
