import { readFileSync } from 'node:fs';
import { describe, expect, it } from 'vitest';
import { readModelText } from '../../../../src/files/readModel';
import { evaluatePlan } from '../../../../src/model/values';
import {
  hoursEntries,
  isChosen,
  staffChoice,
  staffOf,
  type StaffPart,
} from '../../../../src/present/beds/work/staffHours';
import { modelOf, planOf } from '../../../model/table';

const farm = modelOf(`
  own [h/week]: 48 | label: Present staff: hours for these jobs
  promised [min/day]: 120 | label: Guaranteed to the hire
  one [h/week]: 35 | label: Hours of one person
  yearly [h/year]: 2000 | label: Hours of one person in a year
  sum [h/week]: own + one
  seconds [s/plant]: 5 | label: Seconds of the staff
`);
const plan = planOf(farm);
const entries = hoursEntries(farm.cells, plan);
const untouched = (): string => '';

describe('hours of the staff', () => {
  it('are inputs in clock time a week or a day', () => {
    expect(entries.map(({ name }) => name)).toEqual(['own', 'promised', 'one']);
  });

  it('are taken from the words of the entries', () => {
    expect(staffChoice(entries, untouched)).toEqual({ spare: 'own', guaranteed: 'promised', person: 'one' });
  });

  it('are taken from Spanish words, too', () => {
    const finca = modelOf(`
      a [h/week]: 48 | label: Personal actual: horas para estas tareas
      b [h/week]: 20 | label: Horas garantizadas a la persona contratada
      c [h/week]: 38 | label: Horas de una persona a tiempo completo
    `);
    const choice = staffChoice(hoursEntries(finca.cells, planOf(finca)), untouched);
    expect(choice).toEqual({ spare: 'a', guaranteed: 'b', person: 'c' });
  });

  it('are those that someone chose, as long as the model has them', () => {
    const said: Record<StaffPart, string> = { spare: 'one', guaranteed: 'none', person: 'gone' };
    expect(staffChoice(entries, (part) => said[part])).toEqual({ spare: 'one', guaranteed: 'none', person: 'one' });
  });

  it('stay blank where no words fit, and nobody is there then', () => {
    const foreign = modelOf('stunden [h/week]: 48 | label: Stunden der Leute');
    const choice = staffChoice(hoursEntries(foreign.cells, planOf(foreign)), untouched);
    expect(choice).toEqual({ spare: '', guaranteed: '', person: '' });
    expect(isChosen(choice)).toBe(false);
  });

  it('are counted by the week', () => {
    const staff = staffOf(entries, staffChoice(entries, untouched), 'overtime', evaluatePlan(plan));
    expect(staff).toEqual({ spare: 48, guaranteed: 14, person: 35, beyond: 'overtime' });
  });

  it('without an entry are none, and one person’s have no end', () => {
    const none = { spare: 'none', guaranteed: '', person: 'none' };
    expect(staffOf(entries, none, 'second hire', evaluatePlan(plan))).toEqual({
      spare: 0,
      guaranteed: 0,
      person: Infinity,
      beyond: 'second hire',
    });
  });
});

it.each([
  ['transplant-hire', 'Nursery first', ['staff_hours', 'guaranteed_hours', 'person_hours']],
  ['three-stage', 'Three stages', ['staff_hours', '', '']],
  ['channel-or-bench', 'Pot to pot first', ['hours_most', '', '']],
])('the words of %s find its staff', (file, name, found) => {
  const { model } = readModelText(readFileSync(`models/${file}.csv`, 'utf8'));
  const choice = staffChoice(hoursEntries(model.cells, planOf(model, name)), untouched);
  expect(Object.values(choice)).toEqual(found);
});
