// @vitest-environment jsdom
import { createRoot } from 'solid-js';
import { afterEach, expect, test } from 'vitest';
import { createDrafts, type Drafts } from '../../../../src/ui/app/store/drafts';
import { createField, type Field } from '../../../../src/ui/app/store/modelField';
import { createFormat } from '../../../../src/present/text/numberFormat';
import { createModelStore, type ModelStore } from '../../../../src/ui/app/store/modelStore';
import { typedNumber } from '../../../../src/present/text/typedNumber';
import { idOf, nursery } from '../../../present/nursery';

const german = createFormat('de-DE');
const key = { row: 3, column: 'formula' };
let end = (): void => undefined;
afterEach(() => end());

function start(): {
  field: Field;
  store: ModelStore;
  drafts: Drafts;
  committed: () => string;
  type: (text: string) => void;
} {
  return createRoot((dispose) => {
    end = dispose;
    const { model, origin } = nursery();
    const store = createModelStore(model, origin);
    const drafts = createDrafts(store);
    const committed = (): string => store.shown(0, idOf(store.model(), 'wage')).content?.text ?? '';
    const field = createField({
      store,
      drafts,
      committed,
      key: () => key,
      show: (text) => german.written(text),
      read: (typed) => typedNumber(typed, german),
      commit: (text) => store.edit({ ...key, text }),
    });
    field.onFocus();
    return { field, store, drafts, committed, type: (value) => field.onInput({ currentTarget: { value } }) };
  });
}

const press = (name: string): KeyboardEvent => new KeyboardEvent('keydown', { key: name, cancelable: true });

test('valid text is in the model at once and stays as typed until the field is left', () => {
  const { field, committed, type } = start();
  expect(field.text()).toBe('14,5');
  type('1500,50');
  expect([committed(), field.text()]).toEqual(['1500.50', '1500,50']);
  field.onBlur();
  expect(field.text()).toBe('1.500,50');
});

test('invalid text is kept with its reason while the number before stands, and mends', () => {
  const { field, drafts, committed, type } = start();
  type('15.5');
  field.onBlur();
  expect([committed(), field.text(), field.problem()?.message]).toEqual([
    '14.5',
    '15.5',
    'decimal point: 15.5. Write 15,5.',
  ]);
  expect(drafts.all()).toEqual([[3, 'formula', '15.5']]);
  type('15,5');
  expect([committed(), field.problem(), drafts.all()]).toEqual(['15.5', undefined, []]);
});

test('Escape gives back what stood when the field was entered; other keys are left alone', () => {
  const { field, store, committed, type } = start();
  type('16');
  type('16x');
  const escape = press('Escape');
  field.onKeyDown(escape);
  expect([committed(), field.text(), escape.defaultPrevented, store.canUndo()]).toEqual(['14.5', '14,5', true, false]);
  const letter = press('a');
  field.onKeyDown(letter);
  expect(letter.defaultPrevented).toBe(false);
});

test('Escape after Enter gives back what Enter took', () => {
  const { field, committed, type } = start();
  type('16');
  field.onKeyDown(press('Enter'));
  type('17');
  field.onKeyDown(press('Escape'));
  expect(committed()).toBe('16');
});

test('a field follows when its value changes from elsewhere', () => {
  const { field, store, type } = start();
  type('16');
  store.undo();
  expect(field.text()).toBe('14,5');
  store.redo();
  store.finish();
  store.edit({ ...key, text: '13' });
  expect(field.text()).toBe('13');
});
