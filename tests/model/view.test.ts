import { describe, expect, it } from 'vitest';
import { noUnit } from '../../src/core/unit';
import { lever, uncertain, unitOf, type Lever } from '../../src/model/view';
import { asked, idOf, modelOf } from './table';

/** Every way in which two plans can take an input: shared, own, calculated, each of them in A and in B. */
const text = `
both: 2 | range: 1 3
own_a: 2 | range: 1 3 | in A: 7
own_b: 2 | range: 1 3 | in B: 8
own_ab: 2 | range: 1 3 | in A: 7 | in B: 8
made_a: 2 | range: 1 3 | in A: both * 2
made_b: 2 | range: 1 3 | in B: both * 2
certain: 2
shared_made: both * 3 | in A: 9
blank: | in A: 5 | in B: 6
r: both + own_a + own_b + own_ab + made_a + made_b + certain + shared_made + blank`;

/** A lever as `where it moves: base, range`. */
function said(found: Lever | undefined): string {
  if (found === undefined) return 'none';
  const { inPlan, inAgainst, base, range } = found;
  const where = [inPlan ? 'plan' : '', inAgainst ? 'against' : ''].filter(Boolean).join(' and ');
  return `${where}: ${base.toString()}, ${range === undefined ? 'certain' : `${range.low.toString()} to ${range.high.toString()}`}`;
}

function leverOf(name: string, plan: string, against?: string): string {
  const model = modelOf(text);
  return said(lever(asked(model, 'r', plan, against).view, idOf(model, name)));
}

describe('a change of an input lands where the plan takes it from', () => {
  it.each([
    ['both', 'A', 'plan: 2, 1 to 3'],
    ['own_a', 'A', 'plan: 7, certain'],
    ['own_b', 'A', 'plan: 2, 1 to 3'],
    ['own_ab', 'A', 'plan: 7, certain'],
    ['made_a', 'A', 'none'],
    ['made_b', 'A', 'plan: 2, 1 to 3'],
    ['certain', 'A', 'plan: 2, certain'],
    ['shared_made', 'A', 'plan: 9, certain'],
    ['shared_made', 'B', 'none'],
    ['blank', 'A', 'plan: 5, certain'],
    ['r', 'A', 'none'],
  ])('%s in plan %s: %s', (name, plan, where) => {
    expect(leverOf(name, plan)).toBe(where);
  });
});

describe('comparing two plans, a plan that uses the shared value sees it too', () => {
  it.each([
    ['both', 'A', 'B', 'plan and against: 2, 1 to 3'],
    ['certain', 'A', 'B', 'plan and against: 2, certain'],
    ['own_a', 'A', 'B', 'plan: 7, certain'],
    ['own_a', 'B', 'A', 'plan: 2, 1 to 3'],
    ['own_ab', 'A', 'B', 'plan: 7, certain'],
    ['made_b', 'A', 'B', 'plan: 2, 1 to 3'],
    ['made_b', 'B', 'A', 'none'],
    ['shared_made', 'A', 'B', 'plan: 9, certain'],
  ])('%s in %s against %s: %s', (name, plan, against, where) => {
    expect(leverOf(name, plan, against)).toBe(where);
  });
});

describe('uncertain is every input with a range', () => {
  const listed = (plan: string, against?: string) =>
    uncertain(asked(modelOf(text), 'r', plan, against).view).map((found) => `${found.cell.name} ${said(found)}`);

  it('that the plan takes from the shared formula, in file order', () => {
    expect(listed('A')).toEqual(['both plan: 2, 1 to 3', 'own_b plan: 2, 1 to 3', 'made_b plan: 2, 1 to 3']);
  });

  it('or that at least one of two plans takes from there, moving only where it is taken', () => {
    expect(listed('A', 'B')).toEqual([
      'both plan and against: 2, 1 to 3',
      'own_a against: 2, 1 to 3',
      'own_b plan: 2, 1 to 3',
      'made_a against: 2, 1 to 3',
      'made_b plan: 2, 1 to 3',
    ]);
  });

  it('and none without a range', () => {
    const view = asked(modelOf('a: 1\nr: a'), 'r').view;
    expect(uncertain(view)).toEqual([]);
  });
});

it('a cell with a fault in its unit has none', () => {
  const { cells } = modelOf('a [s]: 1\nb [s//]: 1');
  expect([unitOf(cells[0]).text, unitOf(cells[1]), unitOf(undefined)]).toEqual(['s', noUnit, noUnit]);
});
