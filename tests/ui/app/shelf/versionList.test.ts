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

test('a model that no page has open goes back, and what it was becomes a version', async () => {
  const shelf = database();
  const [first, second, third] = works();
  await shelf.write(third!, fileOf());
  await addVersionOf(shelf, first!);
  await addVersionOf(shelf, second!);
  const [, , version] = await listVersions(shelf, 'one');
  expect(version).toMatchObject({ number: 0 });
  const [, one] = await listVersions(shelf, 'one');
  await goBackOnShelf(shelf, 'one', one!.state);
  expect((await shelf.read('one')).work).toMatchObject({ version: 2, changes: first!.changes, layout: undefined });
  const [newest] = await listVersions(shelf, 'one');
  expect(newest).toMatchObject({ number: 3, state: { layout: third!.layout } });
});
