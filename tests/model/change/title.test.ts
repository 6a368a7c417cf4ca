import { expect, test } from 'vitest';
import { buildModel } from '../../../src/model/buildModel';
import { withTitle } from '../../../src/model/change/title';
import { sheetOf } from '../table';

test('the first row of text is the title, and says what the model is about', () => {
  const sheet = withTitle(sheetOf('- Old | note: old words\n- How to read it\nx: 1'), {
    title: 'Mine',
    about: 'Words',
  });
  expect(buildModel(sheet)).toMatchObject({ title: 'Mine' });
  expect(sheet.rows.map(({ fields }) => [fields.get('label'), fields.get('note')])).toEqual([
    ['Mine', 'Words'],
    ['How to read it', undefined],
    [undefined, undefined],
  ]);
});

test('a model without one gets it at its beginning', () => {
  const given = sheetOf('x: 1');
  const sheet = withTitle(given, { title: 'Mine', about: '' });
  expect(buildModel(sheet)).toMatchObject({ title: 'Mine', faults: [] });
  expect(sheet.rows).toHaveLength(2);
  expect(sheet.rows[1]).toBe(given.rows[0]);
});
