import { describe, expect, it } from 'vitest';
import { cropParts } from '../../src/model/cropParts';
import { modelOf, told } from './table';

/** The least that a schedule needs, on the first lines. */
const least = `
n [board]: 40 | crop: boards
i [day]: 2 | crop: interval
t [day]: 10 | crop: stage 1 time
d [plant/board]: 60 | crop: stage 1 density`;

function faults(text: string): string[] {
  return told(modelOf(text).faults);
}

/** Faults of the least schedule with more lines after it, the first of them being record 6. */
function faultsWith(more: string): string[] {
  return faults(`${least}\n${more}`);
}

describe('a schedule is complete', () => {
  it.each([
    ['with boards, interval, and time and density of one stage', ''],
    ['with a survival', 's [%]: 97 | crop: stage 1 survival'],
    ['with a survival that is a plain share', 's: 0.97 | crop: stage 1 survival'],
    ['with a second stage', 'u [week]: 2 | crop: stage 2 time\ne [plant/board]: 21 | crop: stage 2 density'],
    ['with stages out of order', 'e [plant/board]: 21 | crop: stage 2 density\nu [day]: 9 | crop: stage 2 time'],
    ['with a turnaround', 'x [day]: 1 | crop: turnaround'],
    ['with boards of a stage set by hand', 'x [board]: 20 | crop: stage 1 boards'],
    ['with a time for January', 'x [day]: 14 | crop: stage 1 time in 01'],
    ['with a time for December', 'x [week]: 2 | crop: stage 1 time in 12'],
    ['with the area of a board', 'x [m^2/board]: 0.74 | crop: board area'],
    ['with the area of a board without saying board', 'x [ft^2]: 8 | crop: board area'],
    ['with a first sowing', 'x: 60 | crop: first sowing'],
    ['with a closed time', 'x: 350 | crop: closed 1 from\ny: 5 | crop: closed 1 to'],
    [
      'with two closed times',
      'x: 1 | crop: closed 1 from\ny: 5 | crop: closed 1 to\n' +
        'v: 100 | crop: closed 2 from\nw: 105 | crop: closed 2 to',
    ],
    ['with parts that are calculated', 'x [%]: 97 | range: 90 99\ns [%]: x | crop: stage 1 survival'],
  ])('%s', (_claim, more) => {
    expect(faultsWith(more)).toEqual([]);
  });

  it('without any part at all', () => {
    expect(faults('a: 1')).toEqual([]);
  });
});

describe('a part is not known', () => {
  it.each([
    'Boards',
    'board',
    'stage 1',
    'stage time',
    'stage 0 time',
    'stage 01 time',
    'stage one time',
    'stage 1  time',
    'stage 1 length',
    'stage 1 time in 1',
    'stage 1 time in 13',
    'stage 1 time in 00',
    'stage 1 density in 01',
    'closed from',
    'closed 0 from',
    'closed 1',
    'intervals',
    'boards area',
    '__proto__',
    'constructor',
  ])('%s', (part) => {
    expect(faultsWith(`x: 1 | crop: ${part}`)).toEqual([`crop-unknown | 6 | crop | x | ${part}`]);
  });
});

describe('a part is missing', () => {
  const [boards, interval, time, density] = least.trim().split('\n') as [string, string, string, string];
  const missing = (row: number, cell: string, part: string) => `crop-missing | ${row} | crop | ${cell} | ${part}`;

  it.each([
    ['boards', [interval, time, density], [missing(2, 'i', 'boards')]],
    ['interval', [boards, time, density], [missing(2, 'n', 'interval')]],
    ['time of the stage', [boards, interval, density], [missing(4, 'd', 'stage 1 time')]],
    ['density of the stage', [boards, interval, time], [missing(4, 't', 'stage 1 density')]],
    [
      'both of a stage that has a survival',
      [boards, interval, time, density, 's: 1 | crop: stage 2 survival'],
      [missing(6, 's', 'stage 2 time'), missing(6, 's', 'stage 2 density')],
    ],
    [
      'both of a stage that has boards',
      [boards, interval, time, density, 's [board]: 1 | crop: stage 2 boards'],
      [missing(6, 's', 'stage 2 time'), missing(6, 's', 'stage 2 density')],
    ],
    [
      'the time, where only a month has one',
      [boards, interval, density, 'x [day]: 1 | crop: stage 1 time in 05'],
      [missing(4, 'd', 'stage 1 time')],
    ],
    ['all stages', [boards, interval], [missing(2, 'n', 'stage 1 time'), missing(2, 'n', 'stage 1 density')]],
    [
      'boards, interval and a density',
      [time],
      [missing(2, 't', 'boards'), missing(2, 't', 'interval'), missing(2, 't', 'stage 1 density')],
    ],
    [
      'one end of a closed time',
      [boards, interval, time, density, 'x: 1 | crop: closed 1 from'],
      [missing(6, 'x', 'closed 1 to')],
    ],
    [
      'the other end',
      [boards, interval, time, density, 'x: 1 | crop: closed 2 to'],
      [missing(6, 'x', 'closed 2 from')],
    ],
  ])('%s', (_claim, lines, told) => {
    expect(faults(lines.join('\n')).sort()).toEqual([...told].sort());
  });

  it('where stages have a gap, each part of it', () => {
    const third = 'u [day]: 5 | crop: stage 3 time\ne [plant/board]: 21 | crop: stage 3 density';
    expect(faultsWith(third).map((fault) => fault.split(' | ').at(-1))).toEqual(['stage 2 time', 'stage 2 density']);
  });

  it('and the message says which', () => {
    const [fault] = modelOf(boards).faults;
    expect(fault?.message).toMatch(/^crop schedule incomplete: .+ is missing\. Tag the cell that holds it/);
  });

  it('is told shortly, however large a stage number was typed', () => {
    const many = faultsWith('x [day]: 1 | crop: stage 20000 time');
    expect(many.length).toBeLessThan(100);
    expect(many).toContain(missing(6, 'x', 'stage 2 time'));
  });
});

describe('two cells of one part', () => {
  it.each(['boards', 'interval', 'stage 1 time', 'stage 1 density'])('%s: the second is the fault', (part) => {
    const second = modelOf(`${least}\nx: 1 | crop: ${part}`).faults.find(({ code }) => code === 'crop-twice');
    expect(second && told([second])).toEqual([`crop-twice | 6 | crop | x | ${part}`]);
  });

  it('of three cells the last two are', () => {
    const more = 's: 1 | crop: stage 1 survival\nx: 1 | crop: stage 1 survival\ny: 1 | crop: stage 1 survival';
    expect(faultsWith(more).map((fault) => fault.split(' | ').slice(0, 2).join(' '))).toEqual([
      'crop-twice 7',
      'crop-twice 8',
    ]);
  });

  it('the first counts', () => {
    const { cells } = modelOf(`${least}\nx [board]: 1 | crop: boards`);
    expect(cropParts(cells).get('boards')?.name).toBe('n');
  });
});

describe('a unit does not fit its part', () => {
  it.each([
    ['a stage time in clock time', 'x [h]: 1 | crop: stage 1 time in 01'],
    ['a turnaround in months', 'x [month]: 1 | crop: turnaround'],
    ['a survival in days', 'x [day]: 1 | crop: stage 1 survival'],
    ['boards by hand in days', 'x [day]: 1 | crop: stage 1 boards'],
    ['boards by hand in money', 'x [EUR]: 1 | crop: stage 1 boards'],
    ['boards by hand in kilograms', 'x [kg]: 1 | crop: stage 1 boards'],
    ['an area in metres', 'x [m/board]: 1 | crop: board area'],
    ['a first sowing in days', 'x [day]: 60 | crop: first sowing'],
  ])('%s', (_claim, more) => {
    expect(faultsWith(more).map((fault) => fault.split(' | ').slice(0, 2).join(' '))).toEqual(['crop-unit 6']);
  });

  it('a density in plants', () => {
    const text = least.replace('[plant/board]', '[plant]');
    expect(faults(text)).toEqual(['crop-unit | 5 | crop | d | stage 1 density']);
  });
});

it('faults of the schedule leave values as they are', () => {
  const model = modelOf('x [day]: 3 | crop: stage 2 time\ny [day]: x * 2 | crop: nonsense');
  expect(model.plans[0]?.contents.map(({ kind }) => kind)).toEqual(['input', 'calculated']);
});
