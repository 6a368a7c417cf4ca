import { readFileSync } from 'node:fs';
import { describe, expect, it } from 'vitest';
import { readModelText } from '../../../src/files/readModel';
import { guessedTarget, hasOwnAllowance, noTarget, targetFor, targetsOf } from '../../../src/present/timing/targets';
import { modelOf } from '../../model/table';
import { shipped, study } from './trials';

const hire = readModelText(readFileSync('models/transplant-hire.csv', 'utf8')).model;
const targets = targetsOf(hire, 1);

describe('the inputs that a timed step can fill', () => {
  it('are those in time for one of something', () => {
    expect(targets.map(({ cell, noun }) => `${cell.name} ${noun}`)).toEqual([
      'setting_time plant',
      'transplant_time plant',
      'harvest_time plant',
      'washing_time board',
    ]);
  });

  it('are known in any unit of clock time, and are no calculated entries', () => {
    const model = modelOf(`
      plants [plant]: 5
      move [min/plant]: 0.2
      twice [s/plant]: 2 * move
      wait [day/plant]: 3
      pace [plant/h]: 300
    `);
    expect(targetsOf(model, 0).map(({ cell }) => cell.name)).toEqual(['move']);
  });

  it('are guessed by words in common, for every step of the shipped trials', () => {
    expect(study(shipped).map(({ step }) => guessedTarget(step, targets)?.cell.name)).toEqual([
      'setting_time',
      'transplant_time',
      'harvest_time',
      'washing_time',
    ]);
  });

  it('are not guessed without a word in common', () => {
    expect(guessedTarget('sweeping', targets)).toBeUndefined();
    expect(guessedTarget('the time and the', targets)).toBeUndefined();
  });

  it('are as chosen, none too, and as guessed where the chosen one is gone', () => {
    expect(targetFor('transplanting', targets, 'harvest_time')?.cell.name).toBe('harvest_time');
    expect(targetFor('transplanting', targets, noTarget)).toBeUndefined();
    expect(targetFor('transplanting', targets, 'gone')?.cell.name).toBe('transplant_time');
  });
});

it('a model has an allowance of its own where an input is called so', () => {
  expect(hasOwnAllowance(hire)).toBe(true);
  expect(hasOwnAllowance(modelOf('move [s]: 5\nallowance_twice [%]: 2 * 3 %'))).toBe(false);
  expect(hasOwnAllowance(modelOf('move [s]: 5 | label: Allowance for rest'))).toBe(true);
});
