import { describe, expect, it } from 'vitest';
import { lever } from '../../src/model/view';
import { spiderLine, type SpiderLine } from '../../src/study/spider';
import { drain } from './drain';
import { asked, idOf, modelOf } from '../model/table';

function line(text: string, quick = false, plan?: string, against?: string): SpiderLine | undefined {
  const model = modelOf(text);
  const question = asked(model, 'r', plan, against);
  const moved = lever(question.view, idOf(model, 'a'));
  if (moved === undefined) throw new Error('a is no input');
  return drain(spiderLine(question, moved, quick));
}

function ends({ places }: SpiderLine): string[] {
  return [places[0]!, places.at(-1)!].map(({ change, input, result }) => [change, input, result].map(String).join(' '));
}

describe('a spider line', () => {
  it.each([
    ['reaches from one end of the range to the other', 'a: 20 | range: 15 30\nr: a * 10', ['-25 15 150', '50 30 300']],
    ['turns round an input below 0', 'a: -20 | range: -30 -15\nr: a * 10', ['-25 -15 -150', '50 -30 -300']],
    ['stays within the range of an input that lies outside', 'a: 10 | range: 15 20\nr: a', ['50 15 15', '100 20 20']],
    ['says what cannot be computed', 'a: 2 | range: 0 4\nr: 1 / a', ['-100 0 NaN', '100 4 0.25']],
  ])('%s', (_claim, text, expected) => {
    expect(ends(line(text)!)).toEqual(expected);
    expect(ends(line(text, true)!)).toEqual(expected);
  });

  it('passes through today, and holds every change once, ascending', () => {
    const { places } = line('a: 8 | range: 7 11\nr: a ^ 2')!;
    const changes = places.map(({ change }) => change.toNumber());
    expect(places.find(({ change }) => change.isZero())!.result.toString()).toBe('64');
    expect(changes).toEqual([...new Set(changes)].sort((a, b) => a - b));
    for (const { input, result } of places) expect(result.minus(input.pow(2)).abs().lt('1e-25')).toBe(true);
  });

  it('holds a place once that is both half-way and as far as the range reaches to both sides', () => {
    // From 14 to 17 round 15: 16 is half-way to 17 and as far above 15 as 14 is below.
    const { places, bend } = line('a: 15 | range: 14 17\nr: a')!;
    expect(places.filter(({ input }) => input.eq(16))).toHaveLength(1);
    expect(bend!.more.toNumber()).toBeCloseTo(1, 20);
  });

  it('is that of the difference of two plans', () => {
    const text = 'a: 10 | range: 5 20\nk: 1 | in A: 1 | in B: 3\nr: a * k';
    expect(ends(line(text, false, 'B', 'A')!)).toEqual(['-50 5 10', '100 20 40']);
  });

  it.each([
    ['an input that is 0 today', 'a: 0 | range: -1 1\nr: a'],
    ['a range without width', 'a: 2 | range: 2 2\nr: a'],
    ['an input without a range', 'a: 2\nr: a'],
  ])('there is none for %s', (_claim, text) => expect(line(text)).toBeUndefined());
});

describe('its slope', () => {
  it.each([
    ['is what each per cent does', 'a: 20 | range: 15 30\nr: a * 10', '2'],
    ['is a mean where the line bends', 'a: 10 | range: 0 20\nr: a ^ 2', '2'],
    ['is below 0 where the result falls', 'a: 20 | range: 15 30\nr: -a', '-0.2'],
    ['is unknown where an end is', 'a: 2 | range: 0 4\nr: 1 / a', 'NaN'],
  ])('%s', (_claim, text, slope) => expect(line(text)!.slope.toString()).toBe(slope));
});

describe('its bend', () => {
  it.each([
    ['tells equal changes to either side apart', 'a: 10 | range: 5 20\nr: a ^ 2', '50: -75 125'],
    ['is none of a straight line', 'a: 20 | range: 15 30\nr: a * 10', '25: -50 50'],
    ['is that of a limit', 'a: 10 | range: 8 12\nr: min(a, 10)', '20: -2 0'],
  ])('%s', (_claim, text, expected) => {
    const bend = line(text)!.bend!;
    expect(`${bend.change.toString()}: ${bend.less.toString()} ${bend.more.toString()}`).toBe(expected);
  });
  it('takes what only rounding makes of no change for none, in float64 as well', () => {
    for (const quick of [false, true]) {
      const { less, more } = line('a: 10 | range: 8 12\nr: min(a, 10) / 3 * 0.3', quick)!.bend!;
      expect([less.toNumber(), more.toNumber()]).toEqual([expect.closeTo(-0.2, 12), 0]);
    }
  });

  it('is not there where today is not inside the range', () => {
    expect(line('a: 10 | range: 15 20\nr: a')!.bend).toBeUndefined();
    expect(line('a: 10 | range: 10 20\nr: a')!.bend).toBeUndefined();
  });
});
