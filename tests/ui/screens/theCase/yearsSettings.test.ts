import { createRoot } from 'solid-js';
import { expect, it } from 'vitest';
import { decimal } from '../../../../src/core/number';
import { createChoice } from '../../../../src/ui/app/preferences/choice';
import { createModelStore } from '../../../../src/ui/app/store/modelStore';
import { createYearsSettings, type YearsSettings } from '../../../../src/ui/screens/theCase/yearsSettings';
import { modelOf } from '../../../model/table';
import { nursery } from '../../../present/nursery';

function settings(text?: string): { years: YearsSettings; end: () => void } {
  return createRoot((end) => {
    const { model, origin } = nursery();
    const store = createModelStore(text === undefined ? model : modelOf(text), origin);
    const choice = createChoice(store, { plan: () => 0, against: () => undefined } as never);
    return { years: createYearsSettings({ choice, store }, () => 0), end };
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

it('the interest is the one that the model repays prices with, until one is typed', () => {
  const { years, end } = settings(`
    interest [%/year]: 6.5
    lasting [year]: 8
    boards [EUR/year]: 900 EUR * capital_recovery(interest, lasting)
  `);
  expect(years.terms().percent).toEqual(decimal('6.5'));
  years.setRate('5');
  expect(years.terms().percent).toEqual(decimal(5));
  end();
  const plain = settings();
  expect(plain.years.terms().percent).toEqual(decimal(5));
  plain.end();
});
