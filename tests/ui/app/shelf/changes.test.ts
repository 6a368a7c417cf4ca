import { expect, test } from 'vitest';
import { writeTable } from '../../../../src/files/writeTable';
import { edit } from '../../../../src/model/edit';
import { changesOf, reopen } from '../../../../src/ui/app/shelf/changes';
import { idOf, nursery, text } from '../../../present/nursery';
import { fileOf } from './given';

test('an untouched model comes back with the very file', () => {
  const { model, origin } = reopen(fileOf(), { changes: [] });
  expect(model.sheet).toBe(origin.file.sheet);
  expect(writeTable(origin.file, model.sheet)).toBe(text);
});

test('what was changed comes back, and nothing else of the file is touched', () => {
  const { model, origin } = nursery();
  const changed = edit(model, { row: 3, column: 'formula', text: '15' }).model;
  const changes = changesOf(origin.file.sheet, changed.sheet);
  expect(changes).toEqual([[3, 'formula', '15']]);
  const again = reopen(fileOf(), { changes });
  expect(again.model.plans[0]!.contents[idOf(again.model, 'wage')]).toMatchObject({ kind: 'input', text: '15' });
  expect(writeTable(again.origin.file, again.model.sheet)).toBe(text.replace('14.5', '15'));
  expect(again.model.faults).toEqual(changed.faults);
});
