import { expect, test } from 'vitest';
import { writeTable } from '../../../../src/files/writeTable';
import { edit } from '../../../../src/model/edit';
import { withEntry, withoutEntry } from '../../../../src/model/change/entries';
import { withPlan, withPlanRenamed } from '../../../../src/model/change/plans';
import type { Sheet } from '../../../../src/model/sheet';
import { changesOf, layoutOf, reopen, withChanges } from '../../../../src/ui/app/shelf/changes';
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

test('entries and plans that were added, renamed or taken away come back', () => {
  const { model, origin } = nursery();
  const from = origin.file.sheet;
  const entry = { label: 'Rent', unit: 'EUR/month', formula: '300', source: 'entered 3 May 2026' };
  const wage = model.cells[idOf(model, 'wage')]!.row;
  const steps: ((sheet: Sheet) => Sheet)[] = [
    (sheet) => withEntry(sheet, wage, entry).sheet,
    (sheet) => withoutEntry(sheet, wage),
    (sheet) => withPlan(sheet, model.plans[0]!.name, 'Another') as Sheet,
    (sheet) => withPlanRenamed(sheet, 'Another', 'A third') as Sheet,
  ];
  let sheet = from;
  for (const step of steps) {
    sheet = step(sheet);
    const kept = { changes: changesOf(from, sheet), layout: layoutOf(from, sheet) };
    const again = withChanges(from, structuredClone(kept));
    expect(writeTable(origin.file, again)).toBe(writeTable(origin.file, sheet));
  }
  expect(writeTable(origin.file, sheet)).toContain('Rent,EUR/month,300');
  expect(layoutOf(from, from)).toBeUndefined();
});
