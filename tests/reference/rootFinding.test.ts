import { describe, expect, it } from 'vitest';
import checks from '../../shared/checks/rootFinding.json';
import { decimal, type Decimal } from '../../src/core/number';
import type { Curve } from '../../src/study/curve';
import { curveOf, said, search } from '../study/curveOf';

/*
 * Published sets for root finders: Alefeld, Potra and Shi (ACM TOMS 21, 1995), Chandrupatla (Adv. Eng. Software 28,
 * 1997) and SciPy's own, as collected in SciPy's tests; the data file has the sources in full. What is held against the
 * published root is the value found, not how small the result is there: a flat root has a small result far and wide.
 */

interface Case {
  readonly id: string;
  readonly where?: Readonly<Record<string, string>>;
  readonly from: string;
  readonly to: string;
  readonly root: string;
}

interface Family {
  readonly id: string;
  readonly formula: string;
  readonly kind?: string;
  readonly cases: readonly Case[];
}

const families = checks.families as readonly Family[];

/** The functions with a sine, which formulas have not. */
const withSine: Readonly<Record<string, (n: number) => Curve>> = {
  'aps.01': () => ({ exact: (x) => x.sin().minus(x.dividedBy(2)), float: (x) => Math.sin(x) - x / 2 }),
  'aps.05': () => ({ exact: (x) => x.sin().minus('0.5'), float: (x) => Math.sin(x) - 0.5 }),
  'aps.14': (n) => ({
    exact: (x: Decimal) => (x.lte(0) ? decimal(-1) : x.dividedBy('1.5').plus(x.sin()).minus(1)).times(n).dividedBy(20),
    float: (x) => (n / 20) * (x <= 0 ? -1 : x / 1.5 + Math.sin(x) - 1),
  }),
};

function curveFor({ id, formula }: Family, { where = {} }: Case): Curve {
  const inputs = Object.entries(where).map(([name, number]) => `${name}: ${number}`);
  return withSine[id]?.(Number(where['n'])) ?? curveOf(formula, inputs);
}

function casesOf(wanted: (family: Family) => boolean) {
  return families.filter(wanted).flatMap((family) => family.cases.map((one) => [one.id, family, one] as const));
}

/** Published roots have 16 digits at least; a tie of formulas moves a jump by a share of 1e-12. */
const share = { digits: 1e-15, tie: 1.1e-12 };

/*
 * x exp(-1/x²) is 0 in numbers whose powers of ten end at -6143, where 1/x² exceeds some 6140 ln 10: no root can be
 * told from its neighbours there. In float64, in which the source runs, it is 0 for |x| < 0.0366 already.
 */
const underflows = new Set(['aps.13', 'fun7']);
const zeroWithin = 1 / Math.sqrt(6140 * Math.LN10);

it('the sets are there whole', () => {
  const sizes = ['original', 'aps', 'fun'].map((set) => casesOf(({ id }) => id.startsWith(set)).length);
  expect(sizes).toEqual([5, 154, 45]);
});

describe('the published root is found, and it alone', () => {
  const plain = casesOf(({ id, kind }) => kind === undefined && !underflows.has(id));

  it.each(plain)('%s', (_id, family, one) => {
    const { crossings, breaks, holds } = search(curveFor(family, one), one.from, one.to);
    expect([crossings.length, breaks, holds]).toEqual([1, [], null]);
    const { value, direction } = crossings[0]!;
    expect(['up', 'down']).toContain(direction);
    const off = value.minus(one.root).abs().toNumber();
    expect(off).toBeLessThanOrEqual(share.digits * Math.abs(Number(one.root)));
  });
});

describe('a root that underflow hides is found within the numbers at which the function is 0', () => {
  it.each(casesOf(({ id }) => underflows.has(id)))('%s', (_id, family, one) => {
    const curve = curveFor(family, one);
    const { crossings, breaks } = search(curve, one.from, one.to);
    expect([crossings.map(({ direction }) => direction), breaks]).toEqual([['up'], []]);
    const { value } = crossings[0]!;
    expect(value.abs().toNumber()).toBeLessThanOrEqual(zeroWithin);
    expect(curve.exact(value).toString()).toBe('0');
  });
});

describe('a jump across the target is a crossing at the jump', () => {
  it.each(casesOf(({ kind }) => kind === 'jump'))('%s', (_id, family, one) => {
    const { crossings, breaks } = search(curveFor(family, one), one.from, one.to);
    expect([crossings.map(({ direction }) => direction), breaks]).toEqual([['up'], []]);
    expect(crossings[0]!.value.minus(one.root).abs().toNumber()).toBeLessThanOrEqual(share.tie);
  });
});

describe('a pole across the target is a break and no crossing, though the target is filled in at the pole', () => {
  it.each(casesOf(({ kind }) => kind === 'pole'))('%s', (_id, family, one) => {
    const { crossings, breaks } = search(curveFor(family, one), one.from, one.to);
    expect([crossings, breaks.length]).toEqual([[], 1]);
    expect(breaks[0]!.minus(one.root).abs().toNumber()).toBeLessThanOrEqual(share.tie);
  });

  it('and so it is where the pole itself is looked at', () => {
    const filled: Curve = {
      exact: (x) => (x.eq(1) ? decimal(0) : decimal(1).dividedBy(decimal(1).minus(x))),
      float: (x) => (x === 1 ? 0 : 1 / (1 - x)),
    };
    for (const given of [[], ['1']]) expect(said(search(filled, '0.5', '1.7320508', '0', given))).toBe('breaks 1');
  });
});

describe('without a change of side there is no root', () => {
  it.each([
    ['fun1', '2.1', '100', 'everywhere'],
    ['fun1', '-100', '2.09', 'nowhere'],
    ['fun2', '1.0001', '1e12', 'everywhere'],
    ['fun3', '-1e10', '2.9999', 'nowhere'],
    ['fun8', '0.0002', '1', 'everywhere'],
    ['original.03', '1.1', '1.9', 'everywhere'],
    ['aps.02', '1.1', '3', 'nowhere'],
  ])('%s from %s to %s holds %s', (id, from, to, holds) => {
    const family = families.find((one) => one.id === id)!;
    expect(said(search(curveFor(family, family.cases[0]!), from, to))).toBe(holds);
  });

  it.each([
    ['1', 'everywhere'],
    ['0', 'everywhere'],
    ['-1', 'nowhere'],
  ])('a constant %s holds %s', (constant, holds) => {
    expect(said(search(curveOf(`${constant} + 0 * x`), '-10', '10'))).toBe(holds);
  });
});

describe('a root at an end of the range', () => {
  it.each([
    ['fun3', '0', '3', '3 up'],
    ['fun5', '-5', '0', '0 up'],
    ['fun4', '-10', '2', '2 up'],
    ['aps.03', '0', '5', '0 down'],
  ])('%s from %s to %s: %s', (id, from, to, found) => {
    const family = families.find((one) => one.id === id)!;
    expect(said(search(curveFor(family, family.cases[0]!), from, to))).toBe(found);
  });
});
