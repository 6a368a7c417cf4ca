import { takenRows } from '../../../../src/present/table/takenOut';
import { describe, expect, it } from 'vitest';
import { textOf, type Phrase } from '../../../../src/present/text/phrase';
import { createFormat } from '../../../../src/present/text/numberFormat';
import { spiderLines, topsOf, type FoundLines, type Tops } from '../../../../src/present/whatMatters/spider/lines';
import { everySpiderRow, spiderRows, spiderTable } from '../../../../src/present/whatMatters/spider/table';
import { slopeText, spiderSentence } from '../../../../src/present/whatMatters/spider/sentences';
import { tornadoOf } from '../farm';

const english = createFormat('en-GB');
const plain = (phrase: Phrase): string => textOf(phrase).replaceAll('\u00a0', ' ');

type Drawn = Tops & FoundLines & { readonly subject: ReturnType<typeof tornadoOf>['subject'] };

function drawn(text: string): Drawn {
  const { question, subject, bars } = tornadoOf(text, 'alone');
  const tops = topsOf(bars);
  const found = [...spiderLines({ question, ...tops })].filter((one) => one !== undefined);
  return { ...tops, subject, ...found.at(-1)! };
}

const said = (text: string): { main: string; more: string } => {
  const { subject, lines, atZero } = drawn(text);
  const { main, more } = spiderSentence(subject, lines, atZero, english);
  return { main: plain(main), more: plain(more) };
};

const two = [
  'a [h]: 20 | range: 15 30 | label: Wage',
  'b: 10 | range: 5 20 | label: Price',
  'one [h]: 1',
  'r: a * 10 / one + b ^ 2 | label: Margin',
].join('\n');

describe('lines', () => {
  it('are those of the five longest bars that are not 0 today', () => {
    const inputs = Array.from({ length: 7 }, (_, k) => `x${k}: ${k === 5 ? 0 : 1} | range: -${k} 2`);
    const { levers, atZero } = topsOf(
      tornadoOf(`${inputs.join('\n')}\nr: ${inputs.map((_, k) => `x${k}`).join(' + ')}`, 'alone').bars,
    );
    expect(levers.map(({ cell }) => cell.name)).toEqual(['x6', 'x4', 'x3', 'x2', 'x1']);
    expect(atZero.map(({ cell }) => cell.name)).toEqual(['x5']);
  });
  it('are none for a bar without length or with an unknown end', () => {
    const { levers } = topsOf(tornadoOf('a: 2 | range: 0 4\nb: 2 | range: 0 4\nr: 1 / a + b * 0', 'alone').bars);
    expect(levers).toEqual([]);
  });
  it('are none for named choices, of which there is no per cent', () => {
    const choices = 'plug: 1 | range: 1 2 | shape: either | choices: 1 one-use; 2 reusable';
    const { bars } = tornadoOf(`${choices}\na: 2 | range: 1 3\nr: a * plug`, 'alone');
    expect(bars.map(({ lever }) => lever.cell.name)).toContain('plug');
    expect(topsOf(bars).levers.map(({ cell }) => cell.name)).toEqual(['a']);
  });
  it('come in float64 first, then exactly, the steepest first', () => {
    const { question, bars } = tornadoOf(two, 'alone');
    const found = [...spiderLines({ question, ...topsOf(bars) })].filter((one) => one !== undefined);
    expect(found.map(({ exact }) => exact)).toEqual([false, true]);
    for (const { lines } of found) expect(lines.map(({ lever }) => lever.cell.name)).toEqual(['b', 'a']);
  });
});

describe('the sentence', () => {
  it('says which is steepest per cent for per cent', () => {
    // From 25 to 400 over 150 %.
    expect(said(two).main).toBe(
      'Per cent for per cent, Price moves Margin most: 2.5 for each per cent, on average over its range.',
    );
  });
  it('says which bends, by equal changes', () => {
    expect(said(two).more).toBe('Price bends most: 50.0 % less changes it by −75, 50.0 % more by +125.');
  });
  it('says that straight lines are', () => {
    expect(said('a: 20 | range: 15 30\nr: a * 10').more).toContain('run nearly straight');
  });
  it.each([
    [
      'an input that is 0 today',
      'a: 0 | range: -1 1 | label: Frost\nb: 1 | range: 0 2\nr: a * 9 + b',
      'Frost is 0 today',
    ],
    ['an input outside its range', 'a: 1 | range: 2 4 | label: Wage\nr: a', 'lies outside of that for Wage.'],
  ])('names %s', (_claim, text, expected) => expect(said(text).more).toContain(expected));
  it('says that there is no line', () => {
    expect(said('a: 0 | range: -1 1\nr: a | label: Margin').main).toBe(
      'No change in per cent can be shown for Margin.',
    );
  });
});

describe('the numbers', () => {
  const { lines, subject } = drawn(two);
  it('beside the key are the slopes', () => {
    expect(lines.map((line) => slopeText(line, subject, english))).toEqual(['+2.5', '+2']);
  });
  it('in the table are those of the sentence', () => {
    const rows = spiderRows(lines, subject, english).filter(({ cell }) => cell.name === 'b');
    expect(
      rows.map(({ change, input, result }) => `${change.text} ${input.text} ${result.text}`.replaceAll('\u00a0', ' ')),
    ).toEqual(['−50.0 % 5 225', '−25.0 % 7.5 256', 'today 10 300', '+50.0 % 15 425', '+100.0 % 20 600']);
  });
  it('in the file are all places with all digits', () => {
    const table = spiderTable(everySpiderRow(lines, subject, english), 'Margin', 'EUR');
    const [head, first, ...rest] = takenRows(table, 'all', english);
    expect(head).toEqual(['entry', 'change, %', 'number', 'unit of number', 'result, EUR']);
    expect(first).toEqual(['Price', { number: '-50' }, { number: '5' }, '', { number: '225' }]);
    expect(rest).toHaveLength(lines.reduce((sum, { places }) => sum + places.length, 0) - 1);
  });
});
