import { expect, it } from 'vitest';
import { givenBy } from '../../src/formula/given';
import { understand } from '../../src/model/formulaReader';
import { planOfFormula, scopeOf } from '../../src/model/change/formulaScope';
import { modelOf } from '../model/table';

const model = modelOf(`
wage [EUR/h]: 15
hours [h/week]: 40
weeks [week/year]: 50
share [%]: 20
broken [EUR]: nothing_there`);

function given(text: string): unknown {
  const understood = understand(text);
  if (understood.kind !== 'expression') throw new Error(text);
  const found = givenBy(understood.expression, scopeOf(model, planOfFormula(model, 'formula')));
  return 'code' in found ? found.code : found;
}

it.each([
  ['wage * hours * weeks', { kind: 'number', unitText: 'EUR/year' }],
  ['wage * hours', { kind: 'number', unitText: 'EUR/week' }],
  ['share * 2', { kind: 'number', unitText: '' }],
  ['hours > 0 * hours', { kind: 'truth' }],
  ['wage + hours', 'unit-mixed'],
  ['wages', 'name-unknown'],
])('%s', (text, expected) => expect(given(text)).toEqual(expected));
