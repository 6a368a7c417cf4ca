import { describe, expect, it } from 'vitest';
import { runExample } from '../../../src/present/formulaHelp/runExample';

describe('an example', () => {
  it('is worked out as a model of a few entries', () => {
    const worked = runExample({
      formula: 'price * heads',
      unit: 'EUR/year',
      cells: [
        ['price', '0.8', 'EUR/head'],
        ['heads', '1000', 'head/year'],
      ],
    });
    expect({ ...worked, value: worked.value.toString() }).toEqual({
      formula: 'price * heads',
      given: [
        { name: 'price', number: '0.8', unit: 'EUR/head' },
        { name: 'heads', number: '1000', unit: 'head/year' },
      ],
      value: '800',
      unit: 'EUR/year',
    });
  });

  it('that is a condition is true or false', () => expect(runExample({ formula: '2 > 3' }).value).toBe(false));

  it.each(['1 / 0', 'gone * 2', '2 +'])('without a value is our own mistake: %s', (formula) =>
    expect(() => runExample({ formula })).toThrow(`example without a value: ${formula}`),
  );
});
