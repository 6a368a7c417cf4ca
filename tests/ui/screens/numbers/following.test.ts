// @vitest-environment jsdom
import { createMemo, createRoot, createSignal } from 'solid-js';
import { afterEach, beforeEach, expect, test, vi } from 'vitest';
import { createSettled } from '../../../../src/ui/app/store/settling';
import { createModelStore } from '../../../../src/ui/app/store/modelStore';
import { createFollowing } from '../../../../src/ui/screens/numbers/following';
import { idOf, nursery } from '../../../present/nursery';

beforeEach(() => {
  vi.useFakeTimers();
});
afterEach(() => {
  vi.useRealTimers();
});

function start(seen: boolean) {
  const { model, origin } = nursery();
  const store = createModelStore(model, origin);
  const [atOnce, setAtOnce] = createSignal(seen);
  const id = idOf(model, 'wage_twice');
  return createRoot((close) => {
    const following = createFollowing(store, atOnce, createSettled(store.version));
    const text = createMemo(() => following.shown(0, id).number.toString());
    const type = (wage: string): void => store.edit({ row: 3, column: 'formula', text: wage });
    return { text, type, setAtOnce, close };
  });
}

test('a row in sight moves with the keystroke', () => {
  const { text, type, close } = start(true);
  type('18');
  expect(text()).toBe('36');
  close();
});

test('a row out of sight keeps what it shows until nothing has changed for a moment', () => {
  const { text, type, close } = start(false);
  expect(text()).toBe('29');
  for (const wage of ['18', '19', '20']) {
    type(wage);
    vi.advanceTimersByTime(100);
    expect(text()).toBe('29');
  }
  vi.advanceTimersByTime(100);
  expect(text()).toBe('40');
  close();
});

test('a row that comes into sight shows at once how things stand', () => {
  const { text, type, setAtOnce, close } = start(false);
  type('18');
  setAtOnce(true);
  expect(text()).toBe('36');
  type('19');
  expect(text()).toBe('38');
  close();
});

test('nothing follows after the page is closed', () => {
  const { text, type, close } = start(false);
  type('18');
  close();
  vi.advanceTimersByTime(1000);
  expect(vi.getTimerCount()).toBe(0);
  expect(text()).toBe('29');
});
