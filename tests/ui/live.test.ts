// @vitest-environment jsdom
import { createEffect, createRoot } from 'solid-js';
import { expect, test } from 'vitest';
import { createLive, type Live } from '../../src/ui/live';
import { momentOf } from '../../src/ui/moment';
import { idOf, nursery } from './nursery';

function start(): { live: Live; id: (name: string) => number; number: (plan: number, name: string) => string } {
  const { model, origin } = nursery();
  const live = createLive(model, origin);
  const id = (name: string): number => idOf(live.model(), name);
  return { live, id, number: (plan, name) => live.shown(plan, id(name)).number.toString() };
}

const wage = (text: string) => ({ row: 3, column: 'formula', text });

test('an edit moves what it feeds and tells what was before', () => {
  const { live, id, number } = start();
  expect(number(1, 'hands')).toBe('11116.66666666666666666666666666667');
  live.edit(wage('18'));
  expect([number(0, 'hands'), number(1, 'hands'), number(0, 'wage_twice')]).toEqual(['0', '13800', '36']);
  expect(live.before(0, id('wage_twice')).toString()).toBe('29');
});

test('undo takes back one finished edit, however many keystrokes it had', () => {
  const { live, number } = start();
  for (const text of ['1', '18', '18.5']) live.edit(wage(text));
  live.finish();
  live.edit(wage('20'));
  live.finish();
  live.undo();
  expect(number(0, 'wage')).toBe('18.5');
  live.undo();
  expect([number(0, 'wage'), live.canUndo(), live.canRedo()]).toEqual(['14.5', false, true]);
  live.redo();
  live.redo();
  expect([number(0, 'wage'), live.canRedo()]).toEqual(['20', false]);
});

test('an edit after undo forgets what was undone', () => {
  const { live } = start();
  live.edit(wage('18'));
  live.undo();
  live.edit(wage('19'));
  expect(live.canRedo()).toBe(false);
});

test('only readers of what moved are woken', () => {
  const { live, id } = start();
  const cells = ['sales', 'hands', 'wage'].map((name) => [name, id(name)] as const);
  const woken: string[] = [];
  createRoot((dispose) => {
    for (const [name, cell] of cells)
      createEffect(() => {
        live.shown(1, cell);
        woken.push(name);
      });
    queueMicrotask(dispose);
  });
  woken.length = 0;
  live.edit(wage('18'));
  expect(woken.sort()).toEqual(['hands', 'wage']);
});

test('a formula that is changed wakes its entry, and undo brings the checked one back', () => {
  const { live, number } = start();
  live.edit({ row: 13, column: 'formula', text: 'sales' });
  expect(number(1, 'margin')).toBe('179400');
  live.undo();
  expect(live.shown(1, idOf(live.model(), 'margin')).content?.text).toBe('sales - hands');
});

test('opening another model can be undone, and its values are not compared with those before', () => {
  const { live, number } = start();
  live.edit(wage('18'));
  const { model, origin } = nursery('name,formula\nwage,3\n');
  live.open(momentOf(model, origin));
  expect([number(0, 'wage'), live.before(0, 0).toString(), live.origin()]).toEqual(['3', '3', origin]);
  live.undo();
  expect(number(0, 'wage')).toBe('18');
  expect(live.before(0, idOf(live.model(), 'wage')).toString()).toBe('18');
});
