import { describe, expect, test } from 'vitest';
import { plural, pluralBy, type Endings } from '../../src/language/plural';
import spanish from '../../src/language/catalogues/es.json';

describe('the word for several in English', () => {
  test.each([
    ['board', 'boards'],
    ['bench', 'benches'],
    ['tray', 'trays'],
    ['body', 'bodies'],
    ['leaf', 'leaves'],
    ['shelf', 'shelves'],
    ['box', 'boxes'],
  ])('%s', (one, many) => expect(plural(one)).toBe(many));
});

// RAE, Nueva gramática de la lengua española, 3.2: -s after a vowel, -es after a consonant, z becomes c.
describe('the word for several in Spanish', () => {
  test.each([
    ['plancha', 'planchas'],
    ['cubo', 'cubos'],
    ['flor', 'flores'],
    ['pez', 'peces'],
    ['canal', 'canales'],
    ['café', 'cafés'],
  ])('%s', (one, many) => expect(pluralBy(spanish.endings as unknown as Endings, one)).toBe(many));
});

test('without an ending that fits, the word stays', () => expect(pluralBy([['x$', 'y']], 'board')).toBe('board'));
