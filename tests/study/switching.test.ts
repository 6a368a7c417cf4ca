import { describe, expect, it } from 'vitest';
import { decimal } from '../../src/core/number';
import { question } from '../../src/model/response';
import { evaluatePlan } from '../../src/model/values';
import { defaultRange } from '../../src/study/searchRange';
import { switchingValues, type SwitchSearch } from '../../src/study/switching';
import { idOf, modelOf } from '../model/table';

/** `name: nearest (all) change` of every input for the result r, in order. */
function switches(text: string, target = '0', search?: SwitchSearch): string[] {
  const model = modelOf(text);
  const plan = model.plans[0]!;
  const asked = question({ model, result: idOf(model, 'r'), plan, against: undefined }, evaluatePlan(plan), undefined);
  return switchingValues(asked, decimal(target), search).map(({ lever, value, all, changePercent }) => {
    const change = changePercent === undefined ? 'no change' : `${changePercent.toDecimalPlaces(4).toString()} %`;
    return `${lever.cell.name}: ${value?.toString() ?? 'none'} (${all.join(' ')}) ${change}`;
  });
}

// 100 heads at 2 less 150: 0 at a price of 1.5, at 75 heads, and at costs of 200.
const stand = 'costs: 150\nprice: 2 | range: 1.6 2.2\nheads: 100\nidle: 3\nr: price * heads - costs';

describe('switching values', () => {
  it('come with the thinnest margin first, ties in file order, and those that cannot flip it last', () => {
    expect(switches(stand)).toEqual([
      'price: 1.5 (1.5) -25 %',
      'heads: 75 (75) -25 %',
      'costs: 200 (200) 33.3333 %',
      'idle: none () no change',
    ]);
  });

  it('move with the target', () => {
    expect(switches(stand, '-50')[0]).toBe('price: 1 (1) -50 %');
  });

  it.each(['2', '9', '0.1', '1.6'])('are found from %s, in the input’s range or outside', (price) => {
    // 0 at a price of 1.5.
    const found = switches(stand.replace('price: 2 ', `price: ${price} `));
    expect(found.find((line) => line.startsWith('price'))).toContain('price: 1.5 (1.5)');
  });

  it('are the nearest of several', () => {
    expect(switches('x: 4 | range: 0 8\nr: (x - 1) * (x - 6)')).toEqual(['x: 6 (1 6) 50 %']);
  });

  it('have no change in per cent from 0', () => {
    expect(switches('x: 0 | range: 0 8\nr: x - 6')).toEqual(['x: 6 (6) no change']);
  });

  describe('of an input with named choices', () => {
    const choices = '1 one; 2 two; 3 three';
    const trying = { rangeOf: defaultRange, triesChoices: true };
    const tried = (text: string): string[] => switches(text, '0', trying);
    it('are the other choices that flip the result, without per cent', () => {
      expect(tried(`x: 2 | choices: ${choices}\nr: (x - 2.5) * (x - 0.5)`)).toEqual(['x: 3 (3) no change']);
      expect(tried(`x: 1 | choices: ${choices}\nr: x - 1.5`)).toEqual(['x: 2 (2 3) no change']);
    });
    it('are none between two choices', () => {
      expect(tried(`x: 1 | choices: ${choices}\nr: (x - 1.5) * (x - 1.6)`)).toEqual(['x: none () no change']);
    });
    it('are none where it cannot be computed', () => {
      expect(tried('x: 1 | choices: 1 one; 2 two\nr: 1 / (2 - x)')).toEqual(['x: none () no change']);
    });
    it('are searched as numbers where nobody asks for the choices to be tried', () => {
      expect(switches(`x: 1 | choices: ${choices}\nr: x - 1.5`)).toEqual(['x: 1.5 (1.5) 50 %']);
    });
  });

  describe('at a jump stand as people write them', () => {
    const place = (text: string): string => {
      const model = modelOf(text);
      const plan = model.plans[0]!;
      const asked = question(
        { model, result: idOf(model, 'r'), plan, against: undefined },
        evaluatePlan(plan),
        undefined,
      );
      const { place: found } = switchingValues(asked, decimal(0))[0]!;
      return `${found?.at.toString() ?? 'none'} ${found?.kind ?? ''}`;
    };
    it.each([
      ['done there, though the search ends beside it', 'x: 5 | range: 4 6\nr: x > 4.5 ? 1 : -1', '4.5 jumped'],
      ['done behind it', 'x: 5 | range: 4 6\nr: x >= 4.5 ? 1 : -1', '4.5 behind'],
      ['done there from the other side', 'x: 4 | range: 4 6\nr: x >= 4.5 ? 1 : -1', '4.5 jumped'],
      ['done behind it from the other side', 'x: 4 | range: 4 6\nr: x > 4.5 ? 1 : -1', '4.5 behind'],
      ['or come there without one', 'x: 5 | range: 4 6\nr: x - 4.5', '4.5 level'],
      ['at 0 itself', 'x: 5 | range: 4 60\nr: ceil(x) == 0 ? -1 : 1', '0 jumped'],
    ])('%s', (_claim, text, found) => expect(place(text)).toBe(found));
  });

  it('leave out where the target is only touched', () => {
    expect(switches('x: 4 | range: 0 8\nr: (x - 3) * (x - 3)')).toEqual(['x: none () no change']);
  });
});
