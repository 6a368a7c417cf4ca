import { describe, expect, test } from 'vitest';
import { writeTable } from '../../../../src/files/writeTable';
import { edit } from '../../../../src/model/edit';
import { carriedOn, changesOf, isSession, reopen, type KeptSession } from '../../../../src/ui/app/storage/session';
import { idOf, nursery, text } from '../../../present/nursery';

function sessionOf(changes: KeptSession['changes'] = []): KeptSession {
  const {
    origin: { name, shipped, opened, bytes },
  } = nursery();
  return { version: 1, name, shipped, opened, bytes, changes, drafts: [], choice: {}, at: 5 };
}

test('an untouched model comes back with the very file', () => {
  const { model, origin } = reopen(sessionOf());
  expect(model.sheet).toBe(origin.file.sheet);
  expect(writeTable(origin.file, model.sheet)).toBe(text);
});

test('what was changed comes back, and nothing else of the file is touched', () => {
  const { model, origin } = nursery();
  const changed = edit(model, { row: 3, column: 'formula', text: '15' }).model;
  const changes = changesOf(origin.file.sheet, changed.sheet);
  expect(changes).toEqual([[3, 'formula', '15']]);
  const again = reopen(sessionOf(changes));
  expect(again.model.plans[0]!.contents[idOf(again.model, 'wage')]).toMatchObject({ kind: 'input', text: '15' });
  expect(writeTable(again.origin.file, again.model.sheet)).toBe(text.replace('14.5', '15'));
  expect(again.model.faults).toEqual(changed.faults);
});

describe('what the storage gives is checked', () => {
  test('a session is one', () => expect(isSession(sessionOf([[3, 'formula', '15']]))).toBe(true));

  test.each<[string, unknown]>([
    ['nothing', undefined],
    ['null', null],
    ['a text', 'session'],
    ['another version', { ...sessionOf(), version: 2 }],
    ['no bytes', { ...sessionOf(), bytes: 'name,formula' }],
    ['a change of another shape', { ...sessionOf(), changes: [[3, 'formula']] }],
    ['a choice of numbers', { ...sessionOf(), choice: { result: 3 } }],
  ])('%s is none', (_what, value) => expect(isSession(value)).toBe(false));
});

describe('what was written as the page was left', () => {
  const last = (opened: number, at: number): string =>
    JSON.stringify({ version: 1, opened, changes: [[3, 'formula', '16']], drafts: [], choice: {}, at });

  test('carries the session on', () => {
    expect(carriedOn(sessionOf(), last(1, 6))).toMatchObject({ name: 'nursery.csv', changes: [[3, 'formula', '16']] });
  });

  test.each([
    ['of another opening', last(2, 6)],
    ['that is older', last(1, 4)],
    ['that is blank', ''],
    ['that is torn', '{"version":1'],
  ])('%s does not', (_what, lastText) => expect(carriedOn(sessionOf(), lastText)).toEqual(sessionOf()));
});
