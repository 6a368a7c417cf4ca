import { describe, expect, it } from 'vitest';
import { languageOf } from '../../src/language/catalogue';

const spanish = languageOf('es', {
  endings: [['$', 's']],
  texts: { plain: 'llano', both: 'programa', 'set {0}': "fija '{'{0}'}'", broken: 'falta {0' },
  models: { both: 'modelo', Nursery: 'Vivero', 'At {wage}': 'A {wage}' },
});

describe('a language from its catalogue', () => {
  it('has the texts of the program and those of the models, the program’s first', () => {
    expect(['plain', 'both', 'Nursery'].map((key) => spanish.message(key)?.([]))).toEqual([
      ['llano'],
      ['programa'],
      ['Vivero'],
    ]);
  });

  it('has nothing for what it does not know, nor for what every object has', () => {
    expect(['Finishing', 'constructor', ''].map((key) => spanish.message(key))).toEqual([
      undefined,
      undefined,
      undefined,
    ]);
  });

  it('gives braces that are no places as they are', () =>
    expect(spanish.message('set {0}')?.([NaN])).toEqual(['fija {', 0, '}']));

  it('gives braces of a model as they are', () => expect(spanish.message('At {wage}')?.([])).toEqual(['A {wage}']));

  it('throws where a text cannot be read', () => expect(() => spanish.message('broken')).toThrow(SyntaxError));

  it('knows the word for several', () => expect(spanish.plural('cubo')).toBe('cubos'));
});
