import { describe, expect, it } from 'vitest';
import { cropParts } from '../../../src/model/cropParts';
import { boardsOf, stageNames } from '../../../src/present/beds/stageNames';
import { modelOf } from '../../model/table';

const board = { one: 'board', many: 'boards' };

function called(labels: readonly string[]): string[] {
  const rows = labels.map((label, i) => `time${i + 1} [day]: ${i} | crop: stage ${i + 1} time | label: ${label}`);
  return stageNames(cropParts(modelOf(rows.join('\n')).cells), labels.length, board);
}

describe('stages are called', () => {
  it.each([
    [
      ['Time on nursery boards', 'Time on finishing boards'],
      ['nursery', 'finishing'],
    ],
    [
      ['Days crowded', 'Days wide'],
      ['crowded', 'wide'],
    ],
    [
      ['Weeks in the tunnel', 'Weeks at full light'],
      ['tunnel', 'full light'],
    ],
    [
      ['Nursery time', 'Finishing days'],
      ['nursery', 'finishing'],
    ],
  ])('as the labels of their times say: %s', (labels, names) => {
    expect(called(labels)).toEqual(names);
  });

  it.each([
    ['in another language', ['Zeit auf dem ersten Brett', 'Zeit danach'], ['nursery', 'finishing']],
    ['where two labels name the same', ['Time on boards', 'Days on boards'], ['nursery', 'finishing']],
    ['where one label names none', ['Time on tight boards', 'From move to harvest'], ['nursery', 'finishing']],
    ['where a name is too long', ['Time on boards that float in the middle', 'Days wide'], ['nursery', 'finishing']],
    ['three', ['a', 'b', 'c'], ['nursery', 'middle', 'finishing']],
    ['four', ['a', 'b', 'c', 'd'], ['nursery', 'middle 1', 'middle 2', 'finishing']],
    ['one', ['a'], ['finishing']],
  ])('by the trade’s words else: %s', (_why, labels, names) => {
    expect(called(labels)).toEqual(names);
  });
});

it('boards are named by their stage, one without a name by its number', () => {
  const names = { plant: { one: 'pot', many: 'pots' }, board: { one: 'bench', many: 'benches' }, stages: ['tight'] };
  expect(boardsOf(names, 0)).toEqual({ one: 'tight bench', many: 'tight benches' });
  expect(boardsOf(names, 1).many).toBe('stage 2 benches');
});
