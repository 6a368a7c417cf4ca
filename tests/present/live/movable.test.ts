import { describe, expect, it } from 'vitest';
import { movableInputs } from '../../../src/present/live/movable';
import { readModelText } from '../../../src/files/readModel';

const model = readModelText(`name,label,unit,formula,plan: A,plan: B,group,budget
price,Price,EUR/head,1.2,,,Selling,
heads,Heads,head/year,,1000,1500,Selling,
wage,Wage,EUR/h,15,,,Hands,
hours,Hours,h/year,,0,heads * 0.01 h/head,Hands,
idle,Nothing uses it,,5,,,Hands,
sales,Sales,EUR/year,price * heads,,,,return
work,Work,EUR/year,wage * hours,,,,cost
`).model;

describe('the numbers on which a case rests', () => {
  it('stand in the order and under the headings of the file, each with the plans that have their own', () => {
    const found = movableInputs(model, [0, 1]).map(({ heading, inputs }) => [
      heading,
      ...inputs.map(({ cell, plans }) => [cell.name, ...plans]),
    ]);
    expect(found).toEqual([
      ['Selling', ['price', 0], ['heads', 0, 1]],
      ['Hands', ['wage', 0], ['hours', 0, 1]],
    ]);
  });

  it('are none where no entry is a line of the budget', () => {
    expect(movableInputs(readModelText('name,formula\nx,1\n').model, [0])).toEqual([]);
  });
});
