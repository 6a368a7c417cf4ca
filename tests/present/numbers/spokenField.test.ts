import { expect, test } from 'vitest';
import { decimal } from '../../../src/core/number';
import { fieldName, planRemark, spokenMark } from '../../../src/present/numbers/spokenField';
import { createFormat } from '../../../src/present/text/numberFormat';

test.each([
  [true, true, 'own number of plan Nursery'],
  [true, false, 'own number of plan Nursery'],
  [false, true, 'in plan Nursery'],
  [false, false, ''],
])('of a number that is the plan’s own: %s, in an entry where plans can differ: %s, is said: %s', (own, varies, said) =>
  expect(planRemark('Nursery', own, varies)).toBe(said),
);

test.each([
  ['EUR/m^2', 'in plan Nursery', 'Rent, EUR/m², in plan Nursery'],
  ['', 'in plan Nursery', 'Rent, in plan Nursery'],
  ['', '', 'Rent'],
])('the name of a field leaves out what is blank: unit %j, remark %j', (unitText, remark, name) =>
  expect(fieldName({ label: 'Rent', unitText }, remark)).toBe(name),
);

test.each([
  ['h', false, '1.234,5 h'],
  ['', false, '1.234,5'],
  ['h', true, '1.234,5 h, outside its range'],
])('a value on its range is heard with its unit %j and whether it lies outside: %s', (unit, outside, said) =>
  expect(spokenMark(decimal('1234.5'), unit, outside, createFormat('de-DE'))).toBe(said),
);
