import { readFileSync } from 'node:fs';
import { expect, it } from 'vitest';
import { readModelText } from '../../../src/files/readModel';
import { cropParts } from '../../../src/model/cropParts';
import { textOf } from '../../../src/present/text/phrase';
import { boardsFirstMet, boardsIn, namesOf } from '../../../src/present/beds/names';
import { modelOf } from '../../model/table';

const namesIn = (text: string, stages: number): ReturnType<typeof namesOf> =>
  namesOf(cropParts(modelOf(text).cells), stages);

it.each([
  ['transplant-hire', 'nursery, finishing on boards'],
  ['density-lesson', 'nursery, wide on boards'],
  ['three-stage', 'tight, middle, wide on boards'],
  ['channel-or-bench', 'tight, wide on benches'],
])('the stages of %s are called as its labels call them', (file, called) => {
  const { model } = readModelText(readFileSync(`models/${file}.csv`, 'utf8'));
  const count = called.split(' on ')[0]?.split(', ').length ?? 0;
  const names = namesOf(cropParts(model.cells), count);
  expect(`${names.stages.join(', ')} on ${names.board.many}`).toBe(called);
});

it('plants and boards are called by the unit of a density', () => {
  const names = namesIn('holes [potted_herb/bench]: 18 | crop: stage 1 density', 1);
  expect([names.plant, names.board]).toEqual([
    { one: 'potted herb', many: 'potted herbs' },
    { one: 'bench', many: 'benches' },
  ]);
});

it('the boards of several stages are named together', () => {
  const names = namesOf(new Map(), 2);
  expect(textOf(boardsIn(names, [1]))).toBe('nursery boards');
  expect(textOf(boardsIn(names, [1, 2]))).toBe('nursery and finishing boards');
  expect(textOf(boardsFirstMet(names, [1, 2]))).toBe('nursery boards (stage 1) and finishing boards (stage 2)');
});
