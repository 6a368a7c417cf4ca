import { expect, it } from 'vitest';
import { moreText } from '../../../../src/present/theCase/years/fields';
import { outlayEntries } from '../../../../src/present/theCase/years/terms';
import { format } from '../budgets';
import { askedIn, machine } from './machine';

it('beside an entry stands how much more of it there is', () => {
  const of = askedIn(`${machine}\n none: 0\n broken [USD]: spares / none`);
  expect(outlayEntries(of).map((entry) => moreText(entry, of.made, format))).toEqual([
    '+125,000\u00a0USD',
    '0\u00a0USD',
    '0\u00a0USD',
    'no value',
  ]);
});
