import { describe, expect, it } from 'vitest';
import { boxOf, boxPlan, fittedValue } from '../../../src/present/together/boxes';
import { idOf, nursery } from '../nursery';
import { evenLetters } from './laidOut';

const { model } = nursery();
const wage = model.cells[idOf(model, 'wage')]!;

describe('a box', () => {
  it('is as high as its lines', () => {
    const one = boxOf(wage, 'Hands', [0], evenLetters);
    const two = boxOf(wage, 'Hands', [0, 1], evenLetters);
    expect(two.height - one.height).toBe(boxPlan.valueLine);
    expect(one.height - boxOf(wage, '', [0], evenLetters).height).toBe(boxPlan.groupLine);
  });

  it('is always as wide, and never higher than three lines of label make it', () => {
    const long = boxOf({ ...wage, label: 'A label that goes on and on. '.repeat(11) }, 'Hands', [0], evenLetters);
    expect(long.width).toBe(boxPlan.width);
    expect(long.label).toHaveLength(3);
    expect(long.label.at(-1)).toMatch(/…$/);
  });

  it('has its label in large type too, in as many lines as fit', () => {
    const { largeLabel, height } = boxOf({ ...wage, label: 'Plants set out in a batch' }, 'Plants', [0], evenLetters);
    expect(largeLabel.length * boxPlan.largeLine).toBeLessThanOrEqual(height);
    expect(largeLabel[0]).toBe('Plants set');
  });
});

describe('a value in a box', () => {
  it('stands whole where it fits beside its unit', () => {
    expect(fittedValue({ value: '0.490', unit: 'EUR/board/week' }, 'A', evenLetters)).toEqual({
      value: '0.490',
      unit: 'EUR/board/week',
    });
  });

  it('is cut where it does not', () => {
    const { value, unit } = fittedValue(
      { value: '0.'.padEnd(40, '3'), unit: 'EUR/board/week/person' },
      '',
      evenLetters,
    );
    expect(value).toMatch(/^0\.3+…$/);
    expect(unit).toMatch(/^EUR\/.*…$/);
  });
});
