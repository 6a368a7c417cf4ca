import { describe, expect, it, test } from 'vitest';
import { isFieldTexts, isLayout, isOwnWork, isShelfFile, isShelfWork } from '../../../../src/ui/app/shelf/record';
import { fileOf, workOf } from './given';

describe('what the storage gives is checked', () => {
  test('work and file are known', () => {
    expect(isShelfWork(structuredClone(workOf([[3, 'formula', '15']])))).toBe(true);
    expect(isShelfFile(fileOf())).toBe(true);
  });
  test.each<[string, unknown]>([
    ['nothing', undefined],
    ['null', null],
    ['a text', 'work'],
    ['a newer version', { ...workOf(), version: 4 }],
    ['a layout without rows', { ...workOf(), version: 3, layout: { columns: ['name'] } }],
    ['a change without its text', { ...workOf(), changes: [[3, 'formula']] }],
    ['drafts that are no list', { ...workOf(), drafts: {} }],
    ['a choice of numbers', { ...workOf(), choice: { result: 3 } }],
    ['no time', { ...workOf(), at: undefined }],
  ])('%s is no work that can be read', (_what, value) => expect(isShelfWork(value)).toBe(false));
  test('a file without bytes is none', () => expect(isShelfFile({ ...fileOf(), bytes: [1, 2] })).toBe(false));
});

describe('there is work to lose', () => {
  it('where a field was changed', () => expect(isOwnWork(workOf([[3, 'formula', '15']]))).toBe(true));
  it('where a text could not be accepted', () =>
    expect(isOwnWork(workOf([], { drafts: [[3, 'formula', 'dear']] }))).toBe(true));
  it.each(['setting case words A farm', 'setting trials'])('where somebody wrote something: %s', (key) =>
    expect(isOwnWork(workOf([], { choice: { [key]: 'mine' } }))).toBe(true),
  );
  it('but not where somebody only looked at something', () =>
    expect(isOwnWork(workOf([], { choice: { 'setting question': 'beds', 'setting trials name': 'x' } }))).toBe(false));
});

it('a list with a gap in it is no list of texts, and none of a layout', () => {
  const gap: unknown[] = ['name'];
  gap.length = 2;
  expect(isLayout({ columns: gap, rows: [2] })).toBe(false);
  expect(isFieldTexts(Object.assign([], { length: 1 }))).toBe(false);
});
