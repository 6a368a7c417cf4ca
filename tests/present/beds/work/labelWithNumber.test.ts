import { expect, it } from 'vitest';
import { evaluatePlan } from '../../../../src/model/values';
import { labelWithNumber } from '../../../../src/present/beds/work/labelWithNumber';
import { space } from '../../../../src/present/text/numberFormat';
import { modelOf, planOf } from '../../../model/table';
import { english } from '../given';

const farm = modelOf('clean [s/board]: 75 | label: Wash a board');
const [cell] = farm.cells;

it('gives an entry by its label and its number, by its label alone where nothing is worked out', () => {
  const text = labelWithNumber(cell!, evaluatePlan(planOf(farm)), english);
  expect(text.replaceAll(space, ' ')).toBe('Wash a board, 75 s/board');
  expect(labelWithNumber(cell!, undefined, english)).toBe('Wash a board');
});
