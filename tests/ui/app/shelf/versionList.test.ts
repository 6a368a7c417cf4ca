import { expect, test } from 'vitest';
import { edit } from '../../../../src/model/edit';
import { withPlan } from '../../../../src/model/change/plans';
import type { Sheet } from '../../../../src/model/sheet';
import { changesOf, layoutOf } from '../../../../src/ui/app/shelf/changes';
import type { ShelfWork } from '../../../../src/ui/app/shelf/record';
import { goBackOnShelf, listVersions } from '../../../../src/ui/app/shelf/versionList';
import { addVersionOf } from '../../../../src/ui/app/shelf/versions';
import { nursery } from '../../../present/nursery';
import { database, fileOf, workOf } from './given';

/** Work after a wage, after a price as well, and after a plan as well. */
function works(): ShelfWork[] {
  const { model, origin } = nursery();
  const first = edit(model, { row: 3, column: 'formula', text: '15' }).model;
  const second = edit(first, { row: 10, column: 'formula', text: '0.9' }).model.sheet;
  const third = withPlan(second, model.plans[0]!.name, 'Another') as Sheet;
  const from = origin.file.sheet;
  return [first.sheet, second, third].map((sheet) => {
    const layout = layoutOf(from, sheet);
    return workOf(changesOf(from, sheet), layout === undefined ? {} : { version: 3, layout });
  });
}

test('each version says what changed since the one before, and the file as it was opened comes last', async () => {
  const shelf = database();
  await shelf.write(workOf(), fileOf());
  for (const work of works()) await addVersionOf(shelf, work);
  expect((await listVersions(shelf, 'one')).map(({ number, changed }) => [number, changed])).toEqual([
    [3, expect.stringMatching(/new plan: Another$/)],
    [2, 'Price'],
    [1, 'Wage'],
    [0, ''],
  ]);
});

test('the words of the case and the timed batches are kept with each version, and go back where that is asked', async () => {
  const shelf = database();
  const words = (text: string) => ({ 'setting case words A nursery': text, 'setting question': 'beds' });
  await shelf.write(workOf(), fileOf());
  for (const text of ['first', 'second']) await addVersionOf(shelf, workOf([], { choice: words(text) }));
  await addVersionOf(shelf, workOf([], { choice: { ...words('second'), 'setting trials': 'step,plants' } }));
  await shelf.write(workOf([[3, 'formula', '15']], { choice: words('third') }), undefined);
  const listed = await listVersions(shelf, 'one');
  expect(listed.map(({ changed }) => changed)).toEqual([
    'the timed batches',
    'the words of the case',
    'the words of the case',
    '',
  ]);
  expect(listed[2]!.state.own).toEqual({ 'setting case words A nursery': 'first' });
  await goBackOnShelf(shelf, 'one', listed[2]!.state, true);
  expect((await shelf.read('one')).work).toMatchObject({ changes: [], choice: words('first') });
  const [newest] = await listVersions(shelf, 'one');
  await goBackOnShelf(shelf, 'one', newest!.state, false);
  expect((await shelf.read('one')).work).toMatchObject({ changes: [[3, 'formula', '15']], choice: words('first') });
});

test('a model that no page has open goes back, and what it was becomes a version', async () => {
  const shelf = database();
  const [first, second, third] = works();
  await shelf.write(third!, fileOf());
  await addVersionOf(shelf, first!);
  await addVersionOf(shelf, second!);
  const [, , version] = await listVersions(shelf, 'one');
  expect(version).toMatchObject({ number: 0 });
  const [, one] = await listVersions(shelf, 'one');
  await goBackOnShelf(shelf, 'one', one!.state, false);
  expect((await shelf.read('one')).work).toMatchObject({ version: 2, changes: first!.changes, layout: undefined });
  const [newest] = await listVersions(shelf, 'one');
  expect(newest).toMatchObject({ number: 3, state: { layout: third!.layout } });
});
