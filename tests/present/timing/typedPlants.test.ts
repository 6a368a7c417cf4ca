import { describe, expect, it } from 'vitest';
import { typedPlants } from '../../../src/present/timing/typedPlants';
import { english } from './trials';

describe('the plants of a timed batch', () => {
  it.each([
    ['a whole number', '60', { text: '60' }],
    ['marks of thousands', '1,200', { text: '1200' }],
  ])('can be %s', (_what, typed, found) => expect(typedPlants(typed, english)).toEqual(found));

  it.each([
    ['blank', ' ', /^Count the plants of the batch\.$/],
    ['no number', 'some', /^not a number: some\. /],
    ['none', '0', /^plants not a whole number above 0: 0\. /],
    ['a part of one', '2.5', /^plants not a whole number above 0: 2\.5\. /],
    ['below 0', '-3', /^plants not a whole number above 0: -3\. /],
  ])('are asked for again where they are %s', (_what, typed, fault) =>
    expect(typedPlants(typed, english)).toEqual({ fault: expect.stringMatching(fault) as string }),
  );
});
