import { describe, expect, it } from 'vitest';
import { hiddenResults } from '../../../src/present/lesson/hiddenResults';
import { lessonOf } from '../../../src/present/lesson/steps';
import { modelOf } from '../../model/table';

const model = modelOf(
  `
  - A lesson
  - Step 1. How many? | note: {flow; One; answer} of {boards}
  - Step 2. And so? | note: {flow * 2; Two}, {density}
  - Step 3. Why? | note: Because.
  boards [board]: 90
  weeks [week]: 3 | in One: 3 | in Two: 1
  density [plant/board]: plant_in_all / boards
  plant_in_all [plant]: 900
  flow [board/week]: boards / weeks
  rest [board/week]: flow / 2
`,
);
const lesson = lessonOf(model)!;

/** The names of what is hidden, with the plan where it is not hidden in both. */
function hidden(...opened: number[]): string[] {
  const keys = hiddenResults(model, lesson, new Set(opened));
  return model.cells.flatMap(({ id, name }) => {
    const plans = [0, 1].filter((plan) => keys.has(`${plan}/${id}`));
    return plans.length === 2 ? name : plans.map((plan) => `${name} in ${model.plans[plan]!.name}`);
  });
}

describe('the results of a lesson', () => {
  it.each([
    ['all are hidden at first, and no input is', [], ['density', 'flow', 'rest']],
    ['an answer tells a result in its plan alone', [0], ['density', 'flow in Two', 'rest']],
    ['and in both where they do not differ', [1], ['flow in One', 'rest']],
    ['an answer without figures tells none', [2], ['density', 'flow', 'rest']],
    ['nothing is hidden once all steps are open', [0, 1, 2], []],
  ])('%s', (_claim, opened, expected) => {
    expect(hidden(...opened)).toEqual(expected);
  });
});
