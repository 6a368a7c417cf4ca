import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { decimal, type Decimal } from '../../src/core/number';
import { evaluatePlan } from '../../src/model/values';
import { partialBudget, type BudgetLine } from '../../src/trade/partialBudget';
import { modelOf, planOf } from '../model/table';

function sum(lines: readonly BudgetLine[]): Decimal {
  return lines.reduce((total, { value }) => total.plus(value), decimal(0));
}

/** The sums of the four parts and the net change of a written model, from plan Before to plan After. */
function sums(text: string): Record<string, string> {
  const model = modelOf(text);
  expect(model.faults).toEqual([]);
  const [before, after] = [planOf(model, 'Before'), planOf(model, 'After')];
  const { netChange, ...parts } = partialBudget(model.cells, evaluatePlan(before), evaluatePlan(after));
  const totals = Object.entries(parts).map(([name, lines]) => [name, sum(lines).toString()]);
  return { ...(Object.fromEntries(totals) as Record<string, string>), netChange: netChange.toString() };
}

describe('published partial budgets', () => {
  // "Partial Budget Analysis", studylib.net/doc/15970091; it goes with Iowa State Extension, AgDM C6-10 (2010). Salad
  // greens in place of specialty beans in one bed, which stands for a year here. Its "drop in costs" of 172.62 is not
  // used: 209.16 − 36.53 is 172.63.
  it('salad greens for beans: −37.37 a bed, with the hours at their wage', () => {
    expect(
      sums(`
      wage [USD/h]: 10
      hours [h/year]: 18.25 | in Before: 18.25 | in After: 2.8
      greens [USD/year]: 0 | budget: return | in Before: 0 | in After: 150
      beans [USD/year]: 0 | budget: return | in Before: 360 | in After: 0
      beans_hands [USD/year]: hours * wage | budget: cost | in After: 0
      beans_inputs [USD/year]: 0 | budget: cost | in Before: 26.66 | in After: 0
      greens_hands [USD/year]: hours * wage | budget: cost | in Before: 0
      greens_inputs [USD/year]: 0 | budget: cost | in Before: 0 | in After: 8.53
    `),
    ).toEqual({
      addedReturns: '150',
      reducedCosts: '209.16',
      addedCosts: '36.53',
      reducedReturns: '360',
      netChange: '-37.37',
    });
  });

  // "Partial budget is simple, useful financial tool", Southeast Farm Press, page 2. Corn in place of dry beans on 100
  // acres. Its last sentence writes 152,000 where its table has 152,500; only the table leads to −4,500.
  it('corn for dry beans: 152,500 for, 157,000 against, −4,500', () => {
    const found = sums(`
      land [acre/year]: 100
      corn_yield [bushel/acre]: 150
      corn_price [USD/bushel]: 6.5
      bean_yield [sack/acre]: 22
      bean_price [USD/sack]: 40
      corn_cost [USD/acre]: 690
      bean_cost [USD/acre]: 550
      corn [USD/year]: land * corn_yield * corn_price | budget: return | in Before: 0
      beans [USD/year]: land * bean_yield * bean_price | budget: return | in After: 0
      growing_corn [USD/year]: land * corn_cost | budget: cost | in Before: 0
      growing_beans [USD/year]: land * bean_cost | budget: cost | in After: 0
    `);
    expect(found).toEqual({
      addedReturns: '97500',
      reducedCosts: '55000',
      addedCosts: '69000',
      reducedReturns: '88000',
      netChange: '-4500',
    });
    const total = (a: string, b: string): string => decimal(found[a]!).plus(found[b]!).toString();
    expect([total('addedReturns', 'reducedCosts'), total('addedCosts', 'reducedReturns')]).toEqual([
      '152500',
      '157000',
    ]);
  });
});

describe('any partial budget', () => {
  const cents = fc.integer({ min: -9_999_999, max: 9_999_999 }).map((n) => decimal(n).dividedBy(100));
  const line = fc.record({ budget: fc.constantFrom('return', 'cost', ''), before: cents, after: cents });

  // The decision rule of NDSU, Introduction to Partial Budgeting, and NMSU Guide Z-123 (2021), told apart from its
  // parts: whole budgets of both plans, all lines in, one less the other.
  it('nets what returns less costs differ by, each line once and above 0', () => {
    fc.assert(
      fc.property(fc.array(line, { minLength: 1, maxLength: 12 }), (lines) => {
        const text = lines.map(
          ({ budget, before, after }, i) =>
            `x${i} [EUR/year]: 1 | budget: ${budget} | in Before: ${before.toString()} | in After: ${after.toString()}`,
        );
        const model = modelOf(text.join('\n'));
        const [from, to] = [evaluatePlan(planOf(model, 'Before')), evaluatePlan(planOf(model, 'After'))];
        const { netChange, ...parts } = partialBudget(model.cells, from, to);
        const signs = { return: 1, cost: -1, '': 0 };
        const margin = (when: 'before' | 'after'): Decimal =>
          lines.reduce((total, each) => total.plus(each[when].times(signs[each.budget])), decimal(0));
        expect(netChange.toString()).toBe(margin('after').minus(margin('before')).toString());
        const told = Object.values(parts).flat();
        expect(told.every(({ value }) => value.gt(0))).toBe(true);
        const changed = lines.flatMap(({ budget, before, after }, i) =>
          budget !== '' && !before.eq(after) ? [`x${i}`] : [],
        );
        expect(told.map(({ cell }) => cell.name).sort()).toEqual(changed.sort());
      }),
    );
  });
});
