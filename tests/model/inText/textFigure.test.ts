import { describe, expect, it } from 'vitest';
import { textFigure } from '../../../src/model/inText/textFigure';
import { textParts } from '../../../src/model/inText/textParts';
import { evaluatePlan } from '../../../src/model/values';
import { idOf, modelOf } from '../table';

const model = modelOf(`
  boards [board]: 90 | in One: 90
  room [in^2/plant]: 16
  board_area [ft^2/board]: 8
  weeks [week]: 3 | in One: 3 | in Two: 1
  density [plant/board]: board_area / room
  flow [plant/week]: boards * density / weeks
  full: flow > 0
  broken [week]: weeks / 0
`);
const values = model.plans.map((plan) => evaluatePlan(plan));

function figure(text: string): ReturnType<typeof textFigure> {
  const [part] = textParts(text);
  if (part?.kind !== 'figure') throw new Error(`no figure: ${text}`);
  return textFigure(model, part);
}

describe('a figure in a text', () => {
  it.each([
    ['{boards}', '90', 'board', false],
    ['{density; unit}', '72', 'plant/board', true],
    // 90 × 72 ÷ 3 and ÷ 1.
    ['{flow}', '2160', 'plant/week', false],
    ['{flow; Two}', '6480', 'plant/week', false],
    // 8 ft² are 8 × 144 in².
    ['{board_area; in^2/board}', '1152', 'in^2/board', true],
    ['{boards * density}', '6480', 'plant', false],
    ['{weeks; day; Two}', '7', 'day', true],
    ['{full ? 1 : 2}', '1', '', false],
    ['{full; Two}', '1', undefined, false],
    ['{broken}', 'NaN', 'week', false],
  ])('%s is %s', (text, number, unit, withUnit) => {
    const found = figure(text);
    if ('code' in found) throw new Error(found.message);
    expect(found.value(values).toString()).toBe(number);
    expect(found.unit?.text).toBe(unit);
    expect(found.withUnit).toBe(withUnit);
  });

  it('knows the entries that it is made from, and whether it is one of them and the answer', () => {
    expect(figure('{flow; Two; answer}')).toMatchObject({
      plan: 1,
      isAnswer: true,
      entry: idOf(model, 'flow'),
      entries: [idOf(model, 'flow')],
    });
    const made = figure('{boards * density}');
    expect(made).toMatchObject({ isAnswer: false, entry: undefined });
    expect(made).toMatchObject({ entries: [idOf(model, 'boards'), idOf(model, 'density')] });
  });

  it.each([
    ['{Two; boards}', /^not known behind a figure: boards/],
    ['{bords}', /^name not known: bords.*boards/],
    ['{boards + weeks}', /^board and week do not go together/],
    ['{boards; Three}', /^not known behind a figure: Three\./],
    ['{boards; }', /^not known behind a figure: \. Write the name of a plan/],
    ['{boards; week}', /^unit does not fit/],
    ['{boards *}', /^formula not readable/],
    ['{}', /^formula blank/],
  ])('%s has a fault', (text, message) => {
    expect(figure(text)).toMatchObject({ message: expect.stringMatching(message) as unknown });
  });
});
