import { readFileSync } from 'node:fs';
import { describe, expect, it } from 'vitest';
import { decimal, type Decimal } from '../../../src/core/number';
import { readModelText } from '../../../src/files/readModel';
import { buildModel } from '../../../src/model/buildModel';
import type { Model } from '../../../src/model/model';
import { evaluatePlan } from '../../../src/model/values';
import { usualResult } from '../../../src/ui/app/preferences/choice';
import { caseOf } from '../../../src/present/theCase/caseOf';
import { withNetChange } from '../../../src/present/theCase/netChange';

function shipped(name: string): Model {
  return readModelText(readFileSync(`models/${name}.csv`, 'utf8')).model;
}

/** A cell's number in the last plan less that in the first. */
function difference(model: Model, cell: number): Decimal {
  const [first, last] = [model.plans[0]!, model.plans.at(-1)!].map((plan) => evaluatePlan(plan).numbers[cell]);
  return (last ?? decimal(NaN)).minus(first ?? decimal(NaN));
}

function netChange(model: Model): Decimal | string {
  const found = caseOf(
    model,
    model.plans.map((plan) => evaluatePlan(plan)),
    model.plans.length - 1,
    0,
  );
  return found.kind === 'made' ? found.netChange : found.kind;
}

describe('the case of a shipped model', () => {
  it.each([
    ['transplant-hire', 1],
    ['three-stage', 1],
    ['channel-or-bench', 1],
    // Its headline is a cost.
    ['plug-media', -1],
  ])('%s counts what its headline in money a year counts', (name, sign) => {
    const model = shipped(name);
    const headline = model.cells.find((cell) => cell.name === usualResult(model, model.plans.length - 1))!;
    expect(headline.role).toBe('headline');
    const net = netChange(model) as Decimal;
    expect(difference(model, headline.id).times(sign).minus(net).abs().toNumber()).toBeLessThan(1e-20);
    const { sheet, result } = withNetChange(model)!;
    expect(difference(buildModel(sheet), result).minus(net).abs().toNumber()).toBeLessThan(1e-20);
  });

  it('is none for the lesson, which has no money', () => expect(netChange(shipped('density-lesson'))).toBe('no marks'));
});
