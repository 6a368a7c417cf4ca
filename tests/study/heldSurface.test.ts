import { describe, expect, it } from 'vitest';
import { decimal } from '../../src/core/number';
import { lever } from '../../src/model/view';
import { heldSurface } from '../../src/study/heldSurface';
import { asked, idOf, modelOf } from '../model/table';

const question = asked(
  modelOf(`
  early [day]: 10
  late [week]: 2
  holes: 60
  r: early * 1000 / one + late / one * 7 + holes / 1000
  one [day]: 1
`),
  'r',
);
const [early, late, holes] = ['early', 'late', 'holes'].map((name) =>
  lever(question.view, idOf(question.view.model, name))!,
);
const giving = { lever: late!, each: decimal(1).dividedBy(7) };

describe('of a result as two inputs move', () => {
  it('a third gives back what the first takes, in its own unit', () => {
    const surface = heldSurface(question, early!, holes!, giving);
    // Ten days and two weeks stay 24 days: 17 and one week.
    expect(surface.exact(decimal(17), decimal(50)).toNumber()).toBeCloseTo(17 * 1000 + 49 + 0.05, 9);
    expect(surface.float(17, 50)).toBeCloseTo(17 * 1000 + 49 + 0.05, 9);
  });

  it('there is none where nothing is left', () => {
    const surface = heldSurface(question, early!, holes!, giving);
    expect([24, 25].map((x) => surface.exact(decimal(x), decimal(60)).toNumber())).toEqual([NaN, NaN]);
    expect([24.1, 25].map((x) => surface.float(x, 60))).toEqual([NaN, NaN]);
  });

  it('nothing is given back where nothing is held', () => {
    expect(heldSurface(question, early!, holes!, undefined).float(30, 60)).toBeCloseTo(30 * 1000 + 98 + 0.06, 9);
  });
});
