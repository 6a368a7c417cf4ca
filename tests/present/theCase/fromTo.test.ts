import { describe, expect, it } from 'vitest';
import { fromTo } from '../../../src/present/theCase/fromTo';

describe('the line that names both plans', () => {
  it.each([
    ['Today', 'With a hire'],
    ['B', 'A'],
  ])('has its letter before %s and before %s', (from, to) =>
    expect(fromTo([from, to])).toEqual(['From ', { letter: 'A' }, from, ' to ', { letter: 'B' }, to]),
  );
});
