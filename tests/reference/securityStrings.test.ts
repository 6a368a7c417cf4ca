import { describe, expect, it } from 'vitest';
import hostile from '../../shared/checks/hostileFormulas.json';
import { parseUnit } from '../../src/core/unit';
import { check, exactly, scopeOf } from '../formula/given';

// Source: see the file of strings. None of them is a formula; each is a fault as data, and nothing of it is run.
const ownNames = (value: object): string[] => Reflect.ownKeys(value).map(String);

describe('code-like text is refused as a formula', () => {
  const before = [Object.prototype, Array.prototype, Function.prototype, Math, globalThis].map(ownNames);

  it.each(hostile.formulas)('%s', (formula) => {
    const result = check(formula);
    expect('code' in result).toBe(true);
    expect(result).toMatchObject({ message: expect.stringMatching(/^[^:]+: .+/s) as string });
    expect(({} as Record<string, unknown>)['polluted']).toBeUndefined();
  });

  it('and leaves nothing behind', () => {
    for (const formula of hostile.formulas) check(formula);
    expect([Object.prototype, Array.prototype, Function.prototype, Math, globalThis].map(ownNames)).toEqual(before);
    expect(({} as Record<string, unknown>)['polluted']).toBeUndefined();
  });

  it('also where cells and functions of such names could be meant', () => {
    for (const formula of hostile.formulas) {
      const names = ['a', 'b', 'f', 'x', 'polluted', 'process', 'window', 'expression'];
      const result = check(
        `max(${formula}, 1)`,
        '',
        names.map((name) => [name, '1', '']),
      );
      if (!('code' in result)) expect(names).toContain(formula);
    }
  });

  it('and as a unit', () => {
    for (const text of hostile.formulas) expect(parseUnit(text, new Set())).toHaveProperty('code');
  });
});

describe('names that objects have anyway are names like any other:', () => {
  const names = [
    'constructor',
    '__proto__',
    'toString',
    'hasOwnProperty',
    'valueOf',
    'isPrototypeOf',
    '__defineGetter__',
  ];

  it.each(names)('%s is not known where no cell has it', (name) => {
    expect(scopeOf([]).find(name)).toBeUndefined();
    expect(check(name)).toMatchObject({ code: 'name-unknown', where: { text: name } });
    expect(check(`${name}(1)`)).toMatchObject({ code: 'function-name', where: { text: name } });
  });

  it.each(names)('%s is a cell where one has it', (name) => {
    expect(exactly(`${name} * 2`, '', [[name, '21', '']])).toBe('42');
  });
});
