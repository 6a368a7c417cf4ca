import { describe, expect, it } from 'vitest';
import { modelOf, told } from './table';

function faults(text: string): string[] {
  return told(modelOf(text).faults);
}

describe('budget lines stand', () => {
  it.each([
    ['in money per year', 'a [EUR/year]: 1 | budget: return\nb [EUR/year]: 2 | budget: cost'],
    ['in money per month', 'a [EUR/month]: 1 | budget: cost\nb [EUR/year]: 2 | budget: cost'],
    ['in thousands', 'a [thousand*EUR/year]: 1 | budget: cost\nb [EUR/year]: 2 | budget: cost'],
    ['beside other cells that read them', 'a [EUR/year]: 1 | budget: cost\nmargin [EUR/year]: 0 - a'],
    [
      'beside one another when both read a third',
      'x [EUR/year]: 1\na [EUR/year]: x | budget: cost\n' + 'b [EUR/year]: x * 2 | budget: return',
    ],
    ['alone in another currency', 'a [CHF/year]: 1 | budget: cost\nb [EUR/year]: 2'],
  ])('%s', (_claim, text) => {
    expect(faults(text)).toEqual([]);
  });
});

describe('a line is no money per year', () => {
  it.each([
    ['without a unit', 'a: 1 | budget: cost'],
    ['in money', 'a [EUR]: 1 | budget: cost'],
    ['in money per plant', 'a [EUR/plant]: 1 | budget: cost\np [plant]: 1'],
    ['in money per plant and year', 'a [EUR/plant/year]: 1 | budget: cost\np [plant]: 1'],
    ['in money per week', 'a [EUR/week]: 1 | budget: cost'],
    ['in money per hour', 'a [EUR/h]: 1 | budget: cost'],
    ['in a rate of interest', 'a [%/year]: 1 | budget: cost'],
    ['in money times years', 'a [EUR*year]: 1 | budget: cost'],
    ['in years per money', 'a [year/EUR]: 1 | budget: cost'],
    ['in money by money', 'a [EUR^2/year]: 1 | budget: cost'],
    ['in two currencies at once', 'a [EUR*CHF/year]: 1 | budget: cost'],
    ['that is true or false', 'a: 1 > 0 | budget: cost'],
  ])('%s', (_claim, text) => {
    expect(faults(text)).toEqual(['budget-unit | 2 | budget | a | cost']);
  });
});

describe('currencies', () => {
  it('of which the first counts', () => {
    const text = 'a [EUR/year]: 1 | budget: cost\nb [CHF/year]: 2 | budget: return\nc [USD/year]: 3 | budget: cost';
    expect(faults(text)).toEqual([
      'budget-currency | 3 | budget | b | return',
      'budget-currency | 4 | budget | c | cost',
    ]);
  });

  it('the first line that is money says which', () => {
    const text = 'a: 1 | budget: cost\nb [CHF/year]: 2 | budget: cost\nc [EUR/year]: 2 | budget: cost';
    expect(faults(text)).toEqual(['budget-unit | 2 | budget | a | cost', 'budget-currency | 4 | budget | c | cost']);
  });

  it('a line whose unit has a fault is not told twice', () => {
    expect(faults('a [EUR/years]: 1 | budget: cost')).toEqual(['unit-name | 2 | unit | a | years']);
  });
});

describe('a line counts twice', () => {
  const cost = (name: string, formula: string) => `${name} [EUR/year]: ${formula} | budget: cost`;

  it.each([
    ['where it reads another', [cost('a', '1'), cost('b', 'a * 2')], ['b 3']],
    ['where it stands above the one it reads', [cost('b', 'a * 2'), cost('a', '1')], ['b 2']],
    ['where it reads one through other cells', [cost('a', '1'), 'm [EUR/year]: a', cost('b', 'm')], ['b 4']],
    ['where only one arm reads it', [cost('a', '1'), cost('b', 'k > 0 ? a : 0'), 'k: 0'], ['b 3']],
    ['each of two that read the same', [cost('a', '1'), cost('b', 'a'), cost('c', 'a')], ['b 3', 'c 4']],
    ['each of a chain', [cost('a', '1'), cost('b', 'a'), cost('c', 'b')], ['b 3', 'c 4']],
  ])('%s', (_claim, lines, twice) => {
    const found = modelOf(lines.join('\n')).faults.map(({ code, where }) => `${code} ${where.cell} ${where.row}`);
    expect([...new Set(found)]).toEqual(twice.map((line) => `budget-twice ${line}`));
  });

  it('in one plan only, and is told once for all plans', () => {
    const text = `${cost('a', '1')}\n${cost('b', '2')} | in A: a | in B: a * 2 | in C: 3`;
    expect(faults(text)).toEqual(['budget-twice | 3 | budget | b | cost']);
  });

  it('and the message names both', () => {
    const [fault] = modelOf(`${cost('a', '1')}\n${cost('b', 'a')}`).faults;
    expect(fault?.message).toBe('budget line counted twice: b is made from a. Take one of them out of the budget.');
  });
});

it('lines in a circle are told as the circle alone, and a line made from one of them as counted twice', () => {
  const text =
    'a [EUR/year]: b | budget: cost\nb [EUR/year]: a | budget: cost\n' + 'c [EUR/year]: b * 2 | budget: cost';
  const codes = faults(text).map((fault) => fault.split(' | ').slice(0, 2).join(' '));
  expect(codes.filter((code) => code.startsWith('budget'))).toEqual(['budget-twice 4']);
  expect(codes.some((code) => code.startsWith('cycle'))).toBe(true);
});
