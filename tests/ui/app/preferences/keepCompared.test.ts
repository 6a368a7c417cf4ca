// @vitest-environment jsdom
import { createRoot } from 'solid-js';
import { expect, test } from 'vitest';
import { withPlan } from '../../../../src/model/change/plans';
import type { Sheet } from '../../../../src/model/sheet';
import { createChoice, type KeptChoice } from '../../../../src/ui/app/preferences/choice';
import { keepCompared } from '../../../../src/ui/app/preferences/keepCompared';
import { createComparedPlans, type ComparedPlans } from '../../../../src/ui/app/store/comparedPlans';
import { createModelStore, type ModelStore } from '../../../../src/ui/app/store/modelStore';
import { nursery } from '../../../present/nursery';

interface Started {
  readonly store: ModelStore;
  readonly compared: ComparedPlans;
  readonly choice: KeptChoice;
}

function start(kept: Record<string, string> = {}): Started {
  return createRoot(() => {
    const { model, origin } = nursery();
    const store = createModelStore(model, origin);
    const compared = createComparedPlans(store);
    const choice = createChoice(store, compared);
    choice.restore(kept);
    keepCompared(compared, choice, store);
    return { store, compared, choice };
  });
}

test('two plans the usual way round leave nothing to keep', () => {
  const { choice, compared } = start();
  expect([choice.kept(), compared.columns()]).toEqual([{}, [0, 1]]);
});

test('two plans that are swapped stay so when the page is loaded again, and can be swapped back', () => {
  const { choice, compared } = start();
  compared.setAgainst('Nursery');
  compared.setPlan('Straight');
  const again = start(choice.kept());
  expect(again.compared.columns()).toEqual([1, 0]);
  again.compared.setAgainst('Straight');
  again.compared.setPlan('Nursery');
  expect(start(again.choice.kept()).compared.columns()).toEqual([0, 1]);
});

test('of three plans the two that are compared are kept', () => {
  const { store, choice, compared } = start();
  store.replace(withPlan(store.model().sheet, 'Nursery', 'Third') as Sheet);
  compared.setAgainst('Nursery');
  compared.setPlan('Third');
  expect(choice.kept()).toEqual({ 'setting plan': 'Third', 'setting against': 'Nursery' });
});
