import { expect, test } from 'vitest';
import { tornadoHeads } from '../../../../src/present/whatMatters/tornado/texts';

test('the columns of results name their unit, those of inputs do not', () =>
  expect(tornadoHeads('EUR')).toEqual([
    'entry',
    'low',
    'high',
    'result at low, EUR',
    'result at high, EUR',
    'moves it by, EUR',
    'answer',
  ]));

test('no column of plain numbers names a unit', () => expect(tornadoHeads('').join(' ')).not.toContain(','));
