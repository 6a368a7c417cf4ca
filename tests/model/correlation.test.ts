import { describe, expect, it } from 'vitest';
import { correlations, normalCorrelation } from '../../src/model/correlation';
import { modelOf, told } from './table';

/** Three uncertain inputs and a certain one; the named cells' correlations are added. */
function model(claims: Record<string, string>) {
  const line = (name: string, range: string) =>
    `${name}: 2${range}${name in claims ? ` | correlation: ${claims[name] ?? ''}` : ''}`;
  const uncertain = ['a', 'b', 'c'].map((name) => line(name, ' | range: 1 3'));
  return modelOf([...uncertain, line('fixed', ''), 'made: a + b'].join('\n'));
}

function faults(claims: Record<string, string>): string[] {
  return told(model(claims).faults);
}

describe('the correlation of normals behind a rank correlation', () => {
  // Pearson 1907: r = 2 sin(πρ/6). The values at 0, 1/2 (2 sin 15°) and 1 follow from exact sines.
  it.each([
    [0, 0],
    [0.5, (Math.sqrt(6) - Math.sqrt(2)) / 2],
    [-0.5, -(Math.sqrt(6) - Math.sqrt(2)) / 2],
    [1, 1],
    [-1, -1],
  ])('of %d', (rank, r) => {
    expect(normalCorrelation(rank)).toBeCloseTo(r, 15);
  });
});

describe('correlations stand', () => {
  it.each([
    ['on either cell', { b: 'a 0.5' }],
    ['on both, if they agree', { a: 'b 0.5', b: 'a 0.5' }],
    ['twice on one, if they agree', { a: 'b 0.5; b 0.50' }],
    ['of 0', { a: 'b 0' }],
    ['among three', { a: 'b 0.9; c 0.9', b: 'c 0.9' }],
    ['that only just go together', { a: 'b 0.69; c -0.69' }],
  ])('%s', (_claim, claims) => {
    expect(faults(claims)).toEqual([]);
  });
});

describe('a fault', () => {
  it.each<[claim: string, claims: Record<string, string>, told: string[]]>([
    ['a name not known', { a: 'nobody 0.5' }, ['name-unknown | 2 | correlation | a | nobody']],
    ['a name of objects', { a: '__proto__ 0.5' }, ['name-unknown | 2 | correlation | a | __proto__']],
    ['itself', { a: 'a 0.5' }, ['correlation-self | 2 | correlation | a | a']],
    ['a certain input', { a: 'fixed 0.5' }, ['correlation-certain | 2 | correlation | a | fixed']],
    ['from a certain input', { fixed: 'a 0.5' }, ['correlation-certain | 5 | correlation | fixed | fixed']],
    ['a calculated cell', { a: 'made 0.5' }, ['correlation-certain | 2 | correlation | a | made']],
    [
      'two values on two cells',
      { a: 'b 0.5', b: 'a 0.6' },
      ['correlation-conflict | 3 | correlation | b | 0.5 and 0.6'],
    ],
    ['two values on one cell', { a: 'b 0.5; b -0.5' }, ['correlation-conflict | 2 | correlation | a | 0.5 and -0.5']],
    [
      'three that cannot hold together',
      { a: 'b 0.9; c 0.9', b: 'c -0.9' },
      ['correlation-impossible | 2 | correlation | a | a, b, c'],
    ],
    ['three that just cannot', { a: 'b 0.7; c -0.7' }, ['correlation-impossible | 2 | correlation | a | a, b, c']],
    [
      'each of several',
      { a: 'x 0.5; y 0.5', b: 'b 0.1' },
      [
        'name-unknown | 2 | correlation | a | x',
        'name-unknown | 2 | correlation | a | y',
        'correlation-self | 3 | correlation | b | b',
      ],
    ],
  ])('%s', (_claim, claims, expected) => {
    expect(faults(claims)).toEqual(expected);
  });

  it('in a range is not told again as a correlation', () => {
    const text = 'a: 5 | range: 9 1 | correlation: b 0.5\nb: 2 | range: 1 3';
    expect(told(modelOf(text).faults)).toEqual(['range-order | 2 | low | a | 9']);
  });
});

describe('the factor', () => {
  function factor(claims: Record<string, string>) {
    const { cells, ids } = model(claims);
    return correlations(cells, ids).factor;
  }

  it('is none without correlations', () => {
    expect(factor({})).toBeUndefined();
  });

  it('is none where they cannot hold together', () => {
    expect(factor({ a: 'b 0.9; c 0.9', b: 'c -0.9' })).toBeUndefined();
  });

  it('has the cells that are correlated, in file order', () => {
    expect(factor({ c: 'a 0.5' })?.cells).toEqual([0, 2]);
  });

  it('of two cells is r beside the root of 1 - r²', () => {
    const r = normalCorrelation(0.6);
    const [first, second] = factor({ a: 'b 0.6' })?.lower ?? [];
    expect(first).toEqual([1]);
    expect(second?.[0]).toBeCloseTo(r, 15);
    expect(second?.[1]).toBeCloseTo(Math.sqrt(1 - r * r), 15);
  });

  it('times its transpose is the matrix of normal correlations', () => {
    const lower = factor({ a: 'b 0.6; c -0.3', c: 'b 0.1' })?.lower ?? [];
    const product = lower.map((x) => lower.map((y) => x.reduce((sum, value, k) => sum + value * (y[k] ?? 0), 0)));
    const wanted = [
      [1, 0.6, -0.3],
      [0.6, 1, 0.1],
      [-0.3, 0.1, 1],
    ];
    wanted.forEach((row, i) => {
      row.forEach((rank, j) => {
        expect(product[i]?.[j]).toBeCloseTo(normalCorrelation(rank), 14);
      });
    });
  });
});
