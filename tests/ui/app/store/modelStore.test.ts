// @vitest-environment jsdom
import { createEffect, createRoot } from 'solid-js';
import { expect, test } from 'vitest';
import { createModelStore, type ModelStore } from '../../../../src/ui/app/store/modelStore';
import { snapshotOf } from '../../../../src/ui/app/store/snapshot';
import { idOf, nursery } from '../../../present/nursery';

function start(): { store: ModelStore; id: (name: string) => number; number: (plan: number, name: string) => string } {
  const { model, origin } = nursery();
  const store = createModelStore(model, origin);
  const id = (name: string): number => idOf(store.model(), name);
  return { store, id, number: (plan, name) => store.shown(plan, id(name)).number.toString() };
}

const wage = (text: string) => ({ row: 3, column: 'formula', text });

test('an edit moves what it feeds and tells what was before', () => {
  const { store, id, number } = start();
  expect(number(1, 'hands')).toBe('11116.66666666666666666666666666667');
  store.edit(wage('18'));
  expect([number(0, 'hands'), number(1, 'hands'), number(0, 'wage_twice')]).toEqual(['0', '13800', '36']);
  expect(store.before(0, id('wage_twice')).toString()).toBe('29');
});

test('undo takes back one finished edit, however many keystrokes it had', () => {
  const { store, number } = start();
  for (const text of ['1', '18', '18.5']) store.edit(wage(text));
  store.finish();
  store.edit(wage('20'));
  store.finish();
  store.undo();
  expect(number(0, 'wage')).toBe('18.5');
  store.undo();
  expect([number(0, 'wage'), store.canUndo(), store.canRedo()]).toEqual(['14.5', false, true]);
  store.redo();
  store.redo();
  expect([number(0, 'wage'), store.canRedo()]).toEqual(['20', false]);
});

test('an edit after undo forgets what was undone', () => {
  const { store } = start();
  store.edit(wage('18'));
  store.undo();
  store.edit(wage('19'));
  expect(store.canRedo()).toBe(false);
});

test('only readers of what moved are woken', () => {
  const { store, id } = start();
  const cells = ['sales', 'hands', 'wage'].map((name) => [name, id(name)] as const);
  const woken: string[] = [];
  createRoot((dispose) => {
    for (const [name, cell] of cells)
      createEffect(() => {
        store.shown(1, cell);
        woken.push(name);
      });
    queueMicrotask(dispose);
  });
  woken.length = 0;
  store.edit(wage('18'));
  expect(woken.sort()).toEqual(['hands', 'wage']);
});

test('a formula that is changed wakes its entry, and undo brings the checked one back', () => {
  const { store, number } = start();
  store.edit({ row: 13, column: 'formula', text: 'sales' });
  expect(number(1, 'margin')).toBe('179400');
  store.undo();
  expect(store.shown(1, idOf(store.model(), 'margin')).content?.text).toBe('sales - hands');
});

test('opening another model can be undone, and its values are not compared with those before', () => {
  const { store, number } = start();
  store.edit(wage('18'));
  const { model, origin } = nursery('name,formula\nwage,3\n');
  store.open(snapshotOf(model, origin));
  expect([number(0, 'wage'), store.before(0, 0).toString(), store.origin()]).toEqual(['3', '3', origin]);
  store.undo();
  expect(number(0, 'wage')).toBe('18');
  expect(store.before(0, idOf(store.model(), 'wage')).toString()).toBe('18');
});
