import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { decimal } from '../../../../../src/core/number';
import { day } from '../../../../../src/ui/app/preferences/settings/day';
import {
  exactNumber,
  flag,
  names,
  oneOf,
  text,
  wholeNumber,
  type Setting,
} from '../../../../../src/ui/app/preferences/settings/setting';

const limits = { least: 1, most: 10_000_000 };
const five = wholeNumber('k', limits, 5);
const none = exactNumber('k', undefined);
const share = exactNumber('k', decimal(15), (number) => number.gte(0));

describe('a kept text', () => {
  it.each([
    ['a text, as it is', text('k'), ' a b\n', ' a b\n'],
    ['one of a few words', oneOf('k', ['job', 'day'], 'job'), 'day', 'day'],
    ['a whole number', five, '7', 7],
    ['its least', wholeNumber('k', { least: 0, most: 9 }, 1), '0', 0],
    ['an exact number', none, '1.5e3', decimal(1500)],
    ['one that fits', share, '0', decimal(0)],
    // 9 March 2031 is 22,347 days after 1 January 1970: 61 years of 365 days, 15 leap days, 31 + 28 + 8.
    ['a day', day('k'), '2031-03-09', 61 * 365 + 15 + 67],
    ['a yes', flag('k'), 'yes', true],
    ['names', names('k'), 'cost price', ['cost', 'price']],
  ] as [string, Setting<unknown>, string, unknown][])('is read: %s', (_what, setting, kept, value) => {
    expect(setting.read(kept)).toEqual(value);
  });

  it.each([
    ['no word of the few', oneOf('k', ['job', 'day'], 'job'), 'week', 'job'],
    ['no word where none is usual', oneOf('k', ['job', 'day'], undefined), 'week', undefined],
    ['no whole number', five, '7.5', 5],
    ['below the least', five, '0', 5],
    ['above the most', five, '10000001', 5],
    ['no number', none, 'abc', undefined],
    ['a decimal comma', none, '1,5', undefined],
    ['no finite number', none, 'Infinity', undefined],
    ['a number that does not fit', share, '-1', decimal(15)],
    ['no day of the calendar', day('k'), '2031-02-29', undefined],
    ['no yes', flag('k'), 'true', false],
  ] as [string, Setting<unknown>, string, unknown][])(
    'gives the usual value where it is %s',
    (_what, setting, kept, usual) => {
      expect(setting.read(kept)).toEqual(usual);
      expect(setting.read('')).toEqual(usual);
    },
  );
});

describe('a value', () => {
  it.each<[string, string, string]>([
    ['no word', oneOf('k', ['job', 'day'], undefined).write(undefined), ''],
    ['no whole number', wholeNumber('k', limits, undefined).write(undefined), ''],
    ['no number', none.write(undefined), ''],
    ['no day', day('k').write(undefined), ''],
    ['no', flag('k').write(false), ''],
    ['no names', names('k').write([]), ''],
  ])('that is none is kept as a blank: %s', (_what, kept, blank) => expect(kept).toBe(blank));

  it('is kept and read again: a whole number', () => {
    fc.assert(fc.property(fc.integer({ min: 1, max: 10_000_000 }), (n) => five.read(five.write(n)) === n));
  });

  it('is kept and read again: an exact number', () => {
    const digits = fc.bigInt({ min: -(10n ** 33n), max: 10n ** 33n });
    fc.assert(
      fc.property(digits, fc.integer({ min: -60, max: 60 }), (n, power) => {
        const number = decimal(`${n.toString()}e${power}`);
        return none.read(none.write(number))?.eq(number) === true;
      }),
    );
  });

  it('is kept and read again: a day of the years 0 to 9999', () => {
    fc.assert(
      fc.property(fc.integer({ min: -719_528, max: 2_932_896 }), (n) => day('k').read(day('k').write(n)) === n),
    );
  });
});
