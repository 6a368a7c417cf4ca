// @vitest-environment jsdom
import { createRoot } from 'solid-js';
import { expect, test } from 'vitest';
import { withoutPlan, withPlan, withPlanMoved, withPlanRenamed } from '../../../../src/model/change/plans';
import type { Sheet } from '../../../../src/model/sheet';
import { createComparedPlans, type ComparedPlans } from '../../../../src/ui/app/store/comparedPlans';
import { createModelStore, type ModelStore } from '../../../../src/ui/app/store/modelStore';
import { nursery } from '../../../present/nursery';

interface Given {
  readonly store: ModelStore;
  readonly compared: ComparedPlans;
  readonly change: (to: (sheet: Sheet) => ReturnType<typeof withPlan>) => void;
  /** Names of the two that are compared. */
  readonly names: () => string[];
}

/** A model with the plans Straight, Wide and Nursery. */
function given(check: (given: Given) => void): void {
  createRoot((dispose) => {
    const { model, origin } = nursery();
    const store = createModelStore(model, origin);
    const change: Given['change'] = (to) => store.replace(to(store.model().sheet) as Sheet);
    change((sheet) => withPlan(sheet, 'Straight', 'Wide'));
    const compared = createComparedPlans(store);
    check({ store, compared, change, names: () => compared.columns().map((p) => store.shape().plans[p]!.name) });
    dispose();
  });
}

test('the last is compared with the first until others are chosen', () => {
  given(({ compared, names }) => {
    expect(names()).toEqual(['Straight', 'Nursery']);
    compared.setAgainst('Nursery');
    compared.setPlan('Wide');
    expect(names()).toEqual(['Nursery', 'Wide']);
  });
});

test('a comparison follows a plan that gets another name, and back by undo', () => {
  given(({ store, compared, change, names }) => {
    compared.setPlan('Wide');
    change((sheet) => withPlanRenamed(sheet, 'Wide', 'Wider'));
    expect(names()).toEqual(['Straight', 'Wider']);
    change((sheet) => withPlanRenamed(sheet, 'Straight', 'Today'));
    expect(names()).toEqual(['Today', 'Wider']);
    store.undo();
    store.undo();
    expect(names()).toEqual(['Straight', 'Wide']);
  });
});

test('a comparison follows a plan that is moved; of one that is removed it goes to the usual one', () => {
  given(({ compared, change, names }) => {
    compared.setPlan('Wide');
    change((sheet) => withPlanMoved(sheet, 'Wide', -1));
    expect(names()).toEqual(['Straight', 'Wide']);
    change((sheet) => withoutPlan(sheet, 'Wide'));
    expect(names()).toEqual(['Straight', 'Nursery']);
  });
});
