import { describe, expect, it } from 'vitest';
import { numberToText } from '../../src/core/number';
import { lever, type Lever } from '../../src/model/view';
import { grid, gridRange, gridRows, pictureRange, surfaceOf } from '../../src/study/grid';
import { asked, idOf, modelOf } from '../model/table';

function leverOf(line: string): Lever {
  const question = asked(modelOf(`${line}\nr: 1 * x`), 'r');
  return lever(question.view, idOf(question.view.model, 'x'))!;
}

describe('a picture looks', () => {
  it.each([
    ['over the range that an input has', 'x: 12 | range: 9 16', '9 to 16'],
    ['over the range, wherever today’s number is', 'x: 20 | range: 9 16', '9 to 16'],
    ['around the number where the range has no width', 'x: 12 | range: 12 12', '6 to 18'],
    ['around the number where there is no range', 'x: 60', '30 to 90'],
    ['upwards also below 0', 'x: -4', '-6 to -2'],
    ['no higher than 100 % for a share', 'x [%]: 90', '45 to 100'],
    ['from 0 to 1 where there is nothing to go by', 'x: 0', '0 to 1'],
  ])('%s', (_claim, line, range) => {
    const { from, to } = pictureRange(leverOf(line));
    expect(`${numberToText(from)} to ${numberToText(to)}`).toBe(range);
  });

  it('where the command line does, at an input with a range', () => {
    const given = leverOf('x: 12 | range: 9 16');
    expect(pictureRange(given)).toEqual(gridRange(given));
  });
});

const twoInputs = 'a: 2 | range: 0 4\nb: 3 | range: 1 5\nr: (a + 1) * b / (a + b - 5)';

const expected = [
  [-0.25, -1.5, NaN],
  [-1.5, NaN, 7.5],
  [NaN, 7.5, 6.25],
];

function movedIn(text: string): { question: ReturnType<typeof asked>; across: Lever; down: Lever } {
  const question = asked(modelOf(text), 'r');
  const [across, down] = ['a', 'b'].map((name) => lever(question.view, idOf(question.view.model, name))!);
  return { question, across: across!, down: down! };
}

describe('a grid of a result over two inputs', () => {
  it('has a row for each value down and a column for each across', () => {
    const { question, across, down } = movedIn(twoInputs);
    const found = grid(question, across, down, 3);
    expect(found.across.map(numberToText)).toEqual(['0', '2', '4']);
    expect(found.down.map(numberToText)).toEqual(['1', '3', '5']);
    expect(found.values.map((row) => row.map((value) => value.toNumber()))).toEqual(expected);
  });

  it('is the same in float64', () => {
    const { question, across, down } = movedIn(twoInputs);
    const surface = surfaceOf(question, across, down);
    const rows = [...gridRows((x, y) => surface.float(x, y), [0, 2, 4], [1, 3, 5])];
    expect(rows).toEqual(expected);
  });
});
