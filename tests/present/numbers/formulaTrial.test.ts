import { describe, expect, test } from 'vitest';
import { tryEdit } from '../../../src/present/numbers/formulaTrial';
import { idOf, nursery } from '../nursery';

const { model } = nursery();
function fault(name: string, column: string, text: string): string | undefined {
  const id = idOf(model, name);
  return tryEdit(model, id, { row: model.cells[id]!.row, column, text }).fault?.message;
}

describe('an edit is tried out before it counts', () => {
  test.each([
    ['margin', 'formula', 'sales - hands - 0'],
    ['wage', 'formula', '40'],
    ['wage', 'plan: Nursery', '16'],
    ['wage', 'low', '10'],
    ['move_time', 'high', ''],
  ])('%s, %s: %s is taken', (name, column, text) => expect(fault(name, column, text)).toBeUndefined());

  test.each([
    ['margin', 'formula', 'sales - hand', 'Did you mean hands?'],
    ['margin', 'formula', 'sales - wage', 'do not go together'],
    ['margin', 'formula', 'margin + 1', 'margin → margin'],
    ['sales', 'formula', 'margin + hands', 'circle'],
    ['margin', 'formula', '', 'nothing to compute'],
    ['wage', 'low', '20', 'low above high: 20 > 17'],
    ['wage', 'high', 'much', 'not a number: much'],
  ])('%s, %s: %s is not', (name, column, text, said) => expect(fault(name, column, text)).toContain(said));
});

test('a fault upstream is none of the edit’s own', () => {
  const broken = tryEdit(model, idOf(model, 'sales'), { row: 11, column: 'formula', text: 'heads * pric' }).edited
    .model;
  const id = idOf(broken, 'margin');
  const { fault: found } = tryEdit(broken, id, { row: broken.cells[id]!.row, column: 'formula', text: 'sales + 0' });
  expect(found).toBeUndefined();
});
