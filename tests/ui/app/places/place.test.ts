import { describe, expect, it } from 'vitest';
import { screens } from '../../../../src/present/page/questions';
import { addressOf, isSamePlace, placeNamed, visitOf, type Place } from '../../../../src/ui/app/places/place';

const place = (more: Partial<Place> = {}): Place => ({
  question: 'numbers',
  side: 'beds',
  entry: '',
  shelf: false,
  model: '7d1f',
  shipped: '',
  row: undefined,
  ...more,
});

describe('the address of a place', () => {
  it.each<[string, Partial<Place>]>([
    ['', {}],
    ['#numbers/12', { row: 12 }],
    ['#what-matters', { question: 'what matters' }],
    ['#set-up', { question: 'set up' }],
    ['#your-models', { question: 'beds', shelf: true }],
    ['#method/whole-boards', { question: 'method', entry: 'whole boards' }],
  ])('%s', (address, more) => expect(addressOf(place(more))).toBe(address));

  it('names each question so that it is found again', () => {
    for (const question of screens.filter((one) => one !== 'numbers')) {
      expect(placeNamed(addressOf(place({ question })))).toMatchObject({ question, shelf: false });
    }
  });
  it('names an entry by its row and an entry of the methods by its id', () => {
    expect(placeNamed('#numbers/12')).toMatchObject({ question: 'numbers', row: 12 });
    expect(placeNamed('#method/whole-boards')).toMatchObject({ question: 'method', entry: 'whole boards' });
    expect(placeNamed('#your-models')).toEqual({ shelf: true });
  });
  it.each(['', '#', '#model=abc', '#numbers-heading', '#questions', '#nothing/12'])('%s names no place', (hash) =>
    expect(placeNamed(hash)).toBeUndefined(),
  );
  it('holds neither the model’s id nor its name', () => {
    const whole = place({ question: 'beds', model: 'secret', shipped: 'secret', row: 3 });
    expect(addressOf(whole)).not.toContain('secret');
  });
});

describe('what the browser’s history holds', () => {
  it('is read back', () => {
    const visit = { ...place({ question: 'beds', row: 7 }), depth: 3 };
    expect(visitOf(structuredClone(visit))).toEqual(visit);
  });
  it.each([null, 7, 'beds', {}, { depth: 2 }, { ...place(), depth: 'x' }, { ...place(), depth: 1, question: 'moon' }])(
    'is not taken where it is not ours: %j',
    (state) => expect(visitOf(state)).toBeUndefined(),
  );
});

it('places differ by what is seen of them', () => {
  expect(isSamePlace(place(), place({ shipped: 'other' }))).toBe(true);
  for (const more of [{ question: 'beds' }, { side: 'timing' }, { shelf: true }, { model: 'x' }, { row: 1 }] as const)
    expect(isSamePlace(place(), place(more))).toBe(false);
});
