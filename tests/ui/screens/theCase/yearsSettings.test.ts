import { createRoot } from 'solid-js';
import { expect, it } from 'vitest';
import { decimal } from '../../../../src/core/number';
import { createChoice } from '../../../../src/ui/app/preferences/choice';
import { createModelStore } from '../../../../src/ui/app/store/modelStore';
import { createYearsSettings, type YearsSettings } from '../../../../src/ui/screens/theCase/yearsSettings';
import { nursery } from '../../../present/nursery';

function settings(): { years: YearsSettings; end: () => void } {
  return createRoot((end) => {
    const { model, origin } = nursery();
    const store = createModelStore(model, origin);
    const choice = createChoice(store, { plan: () => 0, against: () => undefined } as never);
    return { years: createYearsSettings({ choice, store }), end };
  });
}

it('no outlay is given until one is typed or an entry named; 0 is one', () => {
  const { years, end } = settings();
  expect(years.isGiven()).toBe(false);
  years.setOutlay('0');
  expect(years.isGiven()).toBe(true);
  years.setSource('entries');
  expect(years.isGiven()).toBe(false);
  years.setEntries(['boards', 'holders']);
  expect(years.isGiven()).toBe(true);
  end();
});

it('the terms are as set, and the outlay can be left out again', () => {
  const { years, end } = settings();
  years.setYears(7);
  years.setRate('-1');
  years.setLeft('20');
  years.setOutlay('1e3');
  expect(years.terms()).toEqual({
    source: 'typed',
    typed: decimal(1000),
    entries: [],
    years: 7,
    percent: decimal(-1),
    left: decimal(20),
  });
  years.leaveOut();
  expect([years.isGiven(), years.terms().typed]).toEqual([false, undefined]);
  end();
});
