import { describe, expect, it } from 'vitest';
import {
  chosenEntry,
  inputGroups,
  quantityGroups,
  resultGroups,
  type EntryGroup,
} from '../../../src/present/results/entryGroups';
import { modelOf, planOf } from '../../model/table';

const model = modelOf(`
  price [EUR]: 2 | group: Selling
  fee [EUR]: price / 2 | group: Selling | in B: 3
  margin [EUR]: price - fee | group: Money | role: headline
  fits: margin > 0 | group: Money | role: check
  lone: 5
  twice: lone * 2 | in A: 7 | in B: 8
`);

const told = (groups: readonly EntryGroup[]): string[] =>
  groups.map(({ heading, cells }) => `${heading}: ${cells.map(({ name }) => name).join()}`);

describe('what can be asked about', () => {
  it('is every number that one of the plans calculates, headlines first', () => {
    expect(told(resultGroups(model, [0, 1]))).toEqual(['Headlines: margin', 'Selling: fee']);
  });
  it('and not what the plan looked at has as an input', () =>
    expect(told(resultGroups(model, [0]))).toEqual(['Headlines: margin']));
  it('is nothing where nothing is calculated', () => expect(resultGroups(modelOf('a: 1'), [0])).toEqual([]));
});

describe('what can be moved', () => {
  it('is every input of the plan, decisions too', () => {
    expect(told(inputGroups(model, planOf(model, 'B')))).toEqual(['Selling: price,fee', 'Other: lone,twice']);
  });
  it('over a range is every input but those of named choices', () => {
    const choices = modelOf('plug: 1 | choices: 1 one-use; 2 reusable\nwage: 20\ncost: plug * wage');
    expect(told(inputGroups(choices, planOf(choices)))).toEqual(['Other: plug,wage']);
    expect(told(quantityGroups(choices, planOf(choices)))).toEqual(['Other: wage']);
  });
});

describe('the one that is chosen', () => {
  const groups = inputGroups(model, planOf(model, 'B'));
  it('is the one of the name', () => expect(chosenEntry(groups, 'lone')?.name).toBe('lone'));
  it('is the first where the name is none of them', () => expect(chosenEntry(groups, 'margin')?.name).toBe('price'));
  it('is none where there is none', () => expect(chosenEntry([], 'lone')).toBeUndefined());
});
