import { describe, expect, it } from 'vitest';
import { failuresIn } from '../../src/study/failures';
import { risky } from './risky';

/** Failures as `message in cell by inputs, share`. */
function told(text: string, draws: number[][], compared = false): string[] {
  return failuresIn(risky(text, compared), draws).map(({ message, cell, inputs, share }) => {
    return `${message} in ${cell.name} by ${inputs.map((lever) => lever.cell.name).join(' ')}, ${share}`;
  });
}

const two = 'x: 1 | range: 0 2 uniform\ny: 1 | range: 0 2 uniform';

describe('failed draws', () => {
  it.each<[claim: string, text: string, draws: number[][], found: string[]]>([
    ['name the input that does it alone', `a: y / x\n${two}`, [[0, 1]], ['division by 0 in a by x, 1']],
    [
      'name the cell upstream',
      `a: b + y\nb: log(x)\n${two}`,
      [[0, 1]],
      ['logarithm of a number not above 0 in b by x, 1'],
    ],
    [
      'name all that feed the cell where none does it alone',
      `a: 1 / (x + y)\n${two}`,
      [[0, 0]],
      ['division by 0 in a by x y, 1'],
    ],
    ['name each that does it alone', `a: 1 / (x * y)\n${two}`, [[0, 0]], ['division by 0 in a by x y, 1']],
    [
      'are put together, the most frequent first',
      `a: sqrt(x) / y\n${two}`,
      [
        [1, 0],
        [-1, 1],
        [-2, 1],
        [2, 0],
        [-3, 1],
      ],
      ['square root of a negative number in a by x, 0.6', 'division by 0 in a by y, 0.4'],
    ],
    ['are none where the result is known', `a: x + y\n${two}`, [[0, 1]], []],
    ['are none without draws', `a: y / x\n${two}`, [], []],
  ])('%s', (_claim, text, draws, found) => expect(told(text, draws)).toEqual(found));

  it('of a comparison are looked for in both plans, by the inputs that move there', () => {
    const text = 'a: 1 / b\nb: 1 | in Today: x | in Other: 2 + x - x\nx: 1 | range: 0 2 uniform';
    expect(told(text, [[0]], true)).toEqual(['division by 0 in a by x, 1']);
  });

  it('of a model at fault name what is at fault', () => {
    expect(told('a: x + b\nb: nope\nx: 1 | range: 0 2', [[1]])[0]).toMatch(/^name not known|unknown name/);
  });
});
