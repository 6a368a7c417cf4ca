import { letterOf } from '../../../../src/present/text/planLetter';
// @vitest-environment jsdom
import { createRoot } from 'solid-js';
import { expect, test } from 'vitest';
import { createChoice, type KeptChoice } from '../../../../src/ui/app/preferences/choice';
import { text as textSetting } from '../../../../src/ui/app/preferences/settings/setting';
import { createComparedPlans, type ComparedPlans } from '../../../../src/ui/app/store/comparedPlans';
import { createModelStore, type ModelStore } from '../../../../src/ui/app/store/modelStore';
import { snapshotOf } from '../../../../src/ui/app/store/snapshot';
import { nursery } from '../../../present/nursery';

function start(text?: string): { store: ModelStore; compared: ComparedPlans; choice: KeptChoice } {
  return createRoot(() => {
    const { model, origin } = nursery(text);
    const store = createModelStore(model, origin);
    const compared = createComparedPlans(store);
    return { store, compared, choice: createChoice(store, compared) };
  });
}

const target = textSetting('target');
const three = 'name,formula,plan: One,plan: Two,plan: Three\na,1,2,3,4\nb,2 * a,,,\n';

test('the usual result is the last headline of money a year; no input is chosen', () => {
  const { choice } = start();
  expect([choice.result(), choice.input(), choice.whose()]).toEqual(['margin', undefined, 'difference']);
});

test('a choice is kept, comes back, and gives way where the model does not have it', () => {
  const { choice, store } = start();
  choice.setResult('sales');
  choice.setInput('price');
  choice.set(target, '5');
  const other = start().choice;
  other.restore(choice.kept());
  expect([other.result(), other.input(), other.get(target), other.get(textSetting('else'))]).toEqual([
    'sales',
    'price',
    '5',
    '',
  ]);
  const { model, origin } = nursery('name,formula\nx,1\ny,2 * x\n');
  store.open(snapshotOf(model, origin));
  expect([choice.result(), choice.input(), choice.whose()]).toEqual(['y', undefined, 'plan']);
});

test('a model without entries has nothing to choose', () => {
  const { choice } = start('name,formula\n');
  expect([choice.result(), choice.input()]).toEqual(['', undefined]);
});

test('the last plan is compared with the first until others are chosen', () => {
  const { compared } = start(three);
  expect(compared.columns()).toEqual([0, 2]);
  compared.setAgainst('Two');
  expect(compared.columns()).toEqual([1, 2]);
  compared.setPlan('Two');
  expect(compared.columns()).toEqual([0, 1]);
});

test('plans side by side have letters, one alone has none', () => {
  expect([letterOf(0, 2), letterOf(1, 2), letterOf(0, 1)]).toEqual(['A', 'B', '']);
  expect(start('name,formula\na,1\n').compared.columns()).toEqual([0]);
});
