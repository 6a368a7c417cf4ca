import { describe, expect, it } from 'vitest';
import { blockModel, correlatedPair, correlatedPairs } from '../../src/study/riskModel';
import { sobolIndices } from '../../src/study/sobolIndices';
import { drain } from './drain';
import { risky } from './risky';

const names = (text: string, compared = false): string[] =>
  risky(text, compared).inputs.map(({ lever }) => lever.cell.name);

describe('the inputs of a view', () => {
  it.each<[claim: string, text: string, compared: boolean, found: string[]]>([
    [
      'those with a range that the result depends on',
      'a: x + z\nx: 3 | range: 2 7\ny: 3 | range: 2 7\nz: 1',
      false,
      ['x'],
    ],
    ['in file order', 'y: 3 | range: 2 7\na: x + y\nx: 3 | range: 2 7', false, ['y', 'x']],
    ['of either plan', 'a: x\nx: 3 | range: 2 7 | in Today: | in Other: y\ny: 3 | range: 2 7', true, ['x', 'y']],
    ['not one that both plans replace', 'a: x\nx: 3 | range: 2 7 | in Today: 4 | in Other: 5', true, []],
    ['none for a result that is faulty', 'a: nope\nx: 3 | range: 2 7', false, []],
  ])('%s', (_claim, text, compared, found) => expect(names(text, compared)).toEqual(found));
});

describe('correlated inputs', () => {
  const pair = (text: string): string[] | undefined => correlatedPair(risky(text))?.map(({ lever }) => lever.cell.name);

  it.each<[claim: string, text: string, found: string[] | undefined]>([
    ['two', 'a: x + y\nx: 3 | range: 2 7\ny: 3 | range: 2 7 | correlation: x 0.5', ['y', 'x']],
    ['none', 'a: x + y\nx: 3 | range: 2 7\ny: 3 | range: 2 7', undefined],
    ['a correlation of 0 is none', 'a: x + y\nx: 3 | range: 2 7\ny: 3 | range: 2 7 | correlation: x 0', undefined],
    [
      'with one that does not matter here',
      'a: x\nx: 3 | range: 2 7\ny: 3 | range: 2 7 | correlation: x 0.5',
      undefined,
    ],
  ])('%s', (_claim, text, found) => expect(pair(text)).toEqual(found));
});

describe('all inputs drawn together', () => {
  const pairs = (text: string): string[] =>
    correlatedPairs(risky(text)).map((pair) => pair.map(({ lever }) => lever.cell.name).join(' '));

  it('are told two by two', () => {
    const three = 'a: x + y + z\nx: 3 | range: 2 7\ny: 3 | range: 2 7 | correlation: x 0.5; z 0.2\nz: 1 | range: 0 2';
    expect(pairs(three)).toEqual(['y x', 'y z']);
  });
  it('once where both say so', () => {
    expect(pairs('a: x + y\nx: 3 | range: 2 7 | correlation: y 0.5\ny: 3 | range: 2 7 | correlation: x 0.5')).toEqual([
      'x y',
    ]);
  });
});

describe('indices of a model', () => {
  it('of a difference of plans are those of its parts', () => {
    const text = 'a: 3 * x + y\nx: 0 | range: -1 1 uniform\ny: 0 | range: -1 1 uniform | in Today: 0 | in Other: ';
    const model = risky(text, true);
    const design = { points: 2 ** 11, replicates: 16, seed: 1 };
    const found = drain(
      sobolIndices(
        blockModel(model),
        model.inputs.map(({ distribution }) => distribution),
        design,
      ),
    );
    // The shared x cancels: only y, which one plan replaces, is left.
    expect(found.map(({ total }) => Math.round(total * 100) / 100)).toEqual([0, 1]);
  });
});
