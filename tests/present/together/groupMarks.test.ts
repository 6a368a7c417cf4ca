import { expect, it } from 'vitest';
import { groupMarks } from '../../../src/present/together/groupMarks';
import { shippedModels } from '../../model/shippedModels';
import { idOf, nursery } from '../nursery';

it('an entry has the mark of its group', () => {
  const { model } = nursery();
  const marks = groupMarks(model);
  expect(marks.get(idOf(model, 'wage'))).toEqual({ group: 'Hands', pattern: 0, tint: 0 });
  expect(marks.get(idOf(model, 'boards'))).toBe(marks.get(idOf(model, 'wage')));
  expect(marks.get(idOf(model, 'heads'))).toEqual({ group: 'Plants', pattern: 1, tint: 1 });
});

it('an entry without a group stands under the one before it, as in the list', () => {
  const { model } = nursery('name,label,formula,group\na,A,1,Beds\nb,B,2,\n');
  expect(groupMarks(model).get(1)!.group).toBe('Beds');
});

it.each(shippedModels)('no two groups of %s have the same pattern and tint', (_file, model) => {
  const marks = [...new Set(groupMarks(model).values())];
  expect(new Set(marks.map(({ pattern, tint }) => `${pattern} ${tint}`)).size).toBe(marks.length);
});
