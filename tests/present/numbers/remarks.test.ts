import { describe, expect, test } from 'vitest';
import { evaluatePlan } from '../../../src/model/values';
import type { Model } from '../../../src/model/model';
import { remarksOf, remarkText } from '../../../src/present/numbers/remarks';
import { idOf, nursery, text } from '../nursery';

function remarks(model: Model, name: string): string[] {
  const id = idOf(model, name);
  const shown = model.plans.map((plan) => {
    const { numbers, errors } = evaluatePlan(plan);
    return { number: numbers[id]!, error: errors.get(id), content: plan.contents[id] };
  });
  return remarksOf(model, model.cells[id]!, [0, 1], shown).map((one) => `${one.letter} ${remarkText(one)}`.trim());
}

describe('below an entry stands', () => {
  test.each([
    ['boards', ['A own number of plan Straight', 'B own number of plan Nursery']],
    ['heads', ['A from Without a nursery', 'B from With a nursery']],
    ['wage', []],
    ['sales', []],
  ])('%s', (name, expected) => expect(remarks(nursery().model, name)).toEqual(expected));

  test('a fault, once where it is the same in both plans, and below it where it comes from', () => {
    const { model } = nursery(text.replace('sales - hands', 'sales - hand'));
    expect(remarks(model, 'margin')).toEqual([expect.stringContaining('hand. Did you mean hands?')]);
    const { model: upstream } = nursery(text.replace('heads * price', 'heads * pric'));
    expect(remarks(upstream, 'margin')).toEqual(['cannot be computed without Sales']);
  });

  test('a number that cannot be, in the plan where it cannot', () => {
    const { model } = nursery(text.replace('2 * wage', 'wage / (boards / boards)'));
    expect(remarks(model, 'wage_twice')).toEqual([expect.stringMatching(/^A .*divi/)]);
  });
});
