import { describe, expect, it } from 'vitest';
import { decimal } from '../../../src/core/number';
import { buildModel } from '../../../src/model/buildModel';
import { evaluatePlan } from '../../../src/model/values';
import { readSwitches, switchingSearch } from '../../../src/jobs/switchingSearch';
import { done } from '../../jobs/done';
import { withNetChange } from '../../../src/present/theCase/netChange';
import { modelOf } from '../../model/table';
import { caseIn, hire, madeIn } from './budgets';

/** The difference of the added entry between the last plan and the first. */
function differenceIn(text: string): string {
  const { sheet, result } = withNetChange(modelOf(text))!;
  const model = buildModel(sheet);
  expect(model.faults).toEqual([]);
  const values = model.plans.map((plan) => evaluatePlan(plan).numbers[result] ?? decimal(NaN));
  return values.at(-1)!.minus(values[0]!).toString();
}

describe('a model with its net change as an entry', () => {
  it('differs between the plans by the net change', () => {
    expect(differenceIn(hire)).toBe(madeIn(hire).netChange.toString());
  });

  it('takes costs alone, and returns alone', () => {
    expect(differenceIn('c [EUR/year]: 5 | budget: cost | in A: 5 | in B: 7')).toBe('-2');
    expect(differenceIn('r [EUR/year]: 5 | budget: return | in A: 5 | in B: 7')).toBe('2');
  });

  it('takes hundreds of lines without deep brackets', () => {
    const many = Array.from({ length: 600 }, (_, i) => `c${i} [EUR/year]: 1 | budget: cost | in A: 1 | in B: 3`);
    expect(differenceIn(many.join('\n'))).toBe('-1200');
  });

  it('is none for more lines than a formula can name', () => {
    const many = Array.from({ length: 600 }, (_, i) => `a_cost_with_a_long_name_${i} [EUR/year]: 1 | budget: cost`);
    expect(withNetChange(modelOf(many.join('\n')))).toBeUndefined();
  });

  it('leaves the cells where they are and takes a name that is free', () => {
    const { model } = caseIn(`${hire}\nnet_change [EUR/year]: 1`);
    const { sheet, result } = withNetChange(model)!;
    const built = buildModel(sheet);
    expect(built.cells.slice(0, result).map(({ name }) => name)).toEqual(model.cells.map(({ name }) => name));
    expect(built.cells[result]?.name).toBe('net_change_2');
  });

  it('turns where the net change is 0', () => {
    const text = `${hire}\nfee [EUR/year]: 5 | label: Fee
      fees [EUR/year]: 0 | budget: cost | in A: 0 | in B: 2 * fee`;
    const { model } = caseIn(text);
    const { sheet, result } = withNetChange(model)!;
    const found = readSwitches(
      done(switchingSearch, sheet, { subject: { result, plan: 1, against: 0 }, target: '0' }).found,
      model.cells,
    );
    const fee = found.find(({ cell }) => cell.name === 'fee');
    expect([fee?.base, fee?.value].map(String)).toEqual(['5', '300']);
  });
});
