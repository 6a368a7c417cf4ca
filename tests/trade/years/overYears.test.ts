import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { decimal, type Decimal } from '../../../src/core/number';
import {
  neededGains,
  overYears,
  type OverYears,
  type Payback,
  type YearsAsked,
} from '../../../src/trade/years/overYears';

type Given = Partial<Record<'outlay' | 'gain' | 'rate' | 'left' | 'years', number>>;

function asked({ outlay = 1000, gain = 300, rate = 0.05, left = 0, years = 5 }: Given): YearsAsked {
  return { outlay: decimal(outlay), gain: decimal(gain), rate: decimal(rate), left: decimal(left), years };
}

function found(given: Given): OverYears {
  const answer = overYears(asked(given));
  if ('code' in answer) throw new Error(answer.message);
  return answer;
}

function fault(given: Given): string {
  const answer = overYears(asked(given));
  return 'code' in answer ? answer.message : '';
}

const yearsOf = (payback: Payback): string => (payback.kind === 'after' ? payback.years.toFixed(4) : payback.kind);

describe('money over the years', () => {
  it('adds up year by year: 100 today for 60 a year over two years at 25 %', () => {
    const { lines, netPresentValue, annualEquivalent } = found({ outlay: 100, gain: 60, rate: 0.25, years: 2 });
    expect(
      lines.map(({ what, year, amount, factor, present, cumulative }) =>
        [what, year, ...[amount, factor, present, cumulative].map(String)].join(' '),
      ),
    ).toEqual(['outlay 0 -100 1 -100 -100', 'gain 1 60 0.8 48 -52', 'gain 2 60 0.64 38.4 -13.6']);
    expect(netPresentValue.toString()).toBe('-13.6');
    // 13.6 ÷ (0.8 + 0.64)
    expect(annualEquivalent.toFixed(6)).toBe('-9.444444');
  });

  it('pays back within a year by what that year brings, later with interest than without', () => {
    const { simple, discounted } = found({ outlay: 100, gain: 80, rate: 0.25, years: 3 });
    expect(yearsOf(simple)).toBe('1.2500');
    // 64 after one year, 51.2 in the second: 36 ÷ 51.2
    expect(yearsOf(discounted)).toBe('1.7031');
  });

  it('has the value left as a line of its own, which does not pay back', () => {
    const { lines, netPresentValue, simple } = found({ outlay: 100, gain: 10, rate: 0, left: 90, years: 2 });
    expect(lines.at(-1)).toMatchObject({ what: 'left', year: 2 });
    expect(netPresentValue.toString()).toBe('10');
    expect(simple.kind).toBe('not within');
  });

  it('counts years alike at a rate of 0', () => {
    const { netPresentValue, annualEquivalent, simple, discounted, annuity } = found({ rate: 0 });
    expect([netPresentValue, annualEquivalent, annuity].map(String)).toEqual(['500', '100', '5']);
    expect(yearsOf(discounted)).toBe(yearsOf(simple));
  });

  it('values what comes later more at a rate below 0', () => {
    const { netPresentValue, simple, discounted } = found({ rate: -0.01 });
    expect(netPresentValue.gt(500)).toBe(true);
    expect(Number(yearsOf(discounted))).toBeLessThan(Number(yearsOf(simple)));
  });

  it('has nothing to pay back without an outlay, and no internal rate', () => {
    const answer = found({ outlay: 0 });
    expect([answer.simple.kind, answer.discounted.kind, answer.internal.kind]).toEqual(['at once', 'at once', 'none']);
  });

  it('never pays back where the gain is 0 or less, or comes too late', () => {
    expect(found({ gain: 0 }).simple.kind).toBe('not within');
    expect(found({ gain: -5 }).discounted.kind).toBe('not within');
    expect(found({ gain: 199 }).simple.kind).toBe('not within');
    expect(yearsOf(found({ gain: 200 }).simple)).toBe('5.0000');
    expect(found({ gain: 200 }).discounted.kind).toBe('not within');
  });

  it('tells no internal rate where getting rid of things at the end costs much', () => {
    // −100, 60, 60, −15: at 0 % 5 are over, at −90 % and at 50 % nothing is.
    expect(found({ outlay: 100, gain: 60, left: -75, years: 3 }).internal.kind).toBe('several');
    expect(found({ outlay: 100, gain: 60, left: -100, years: 3 }).internal.kind).toBe('none');
  });

  it.each([
    [{ years: 0 }, 'no whole number of years from 1 to 100: 0. Look at one year or more.'],
    [{ years: 2.5 }, 'no whole number of years from 1 to 100: 2.5. Look at one year or more.'],
    [{ years: 101 }, 'no whole number of years from 1 to 100: 101. Look at one year or more.'],
    [{ rate: -1 }, 'no rate above −100 % a year: -100 %. At such a rate money that comes later has no worth today.'],
    [{ rate: NaN }, 'no rate above −100 % a year: NaN %. At such a rate money that comes later has no worth today.'],
    [{ gain: NaN }, 'no amount of money: NaN. Give outlay, gain and what is left as numbers.'],
    [{ outlay: Infinity }, 'no amount of money: Infinity. Give outlay, gain and what is left as numbers.'],
  ])('refuses %j', (given: Given, message) => expect(fault(given)).toBe(message));

  it('computes a century at the rates nearest to the limits', () => {
    expect(found({ years: 100, rate: 50 }).netPresentValue.isFinite()).toBe(true);
    expect(found({ years: 100, rate: -0.99 }).netPresentValue.isFinite()).toBe(true);
  });
});

describe('the yearly gain that is needed', () => {
  it('is where the net present value is 0, and where the outlay is paid back in time', () => {
    const money = fc.integer({ min: 1, max: 1_000_000 }).map((cents) => cents / 100);
    fc.assert(
      fc.property(
        fc.record({
          outlay: money,
          left: fc.integer({ min: -500, max: 5000 }),
          years: fc.integer({ min: 1, max: 15 }),
          rate: fc.integer({ min: -20, max: 60 }).map((percent) => percent / 100),
        }),
        (terms) => {
          const needed = neededGains(found(terms));
          const at = (gain: Decimal): OverYears => overYears({ ...asked(terms), gain }) as OverYears;
          const tiny = decimal('1e-9');
          expect(at(needed.worth.plus(tiny)).netPresentValue.gt(0)).toBe(true);
          expect(at(needed.worth.minus(tiny)).netPresentValue.lt(0)).toBe(true);
          expect(at(needed.paidBack.plus(tiny)).discounted.kind).toBe('after');
          expect(at(needed.paidBack.minus(tiny)).discounted.kind).toBe('not within');
        },
      ),
      { numRuns: 15 },
    );
  });
});
