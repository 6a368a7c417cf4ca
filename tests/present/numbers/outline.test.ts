import { describe, expect, test } from 'vitest';
import { keptLines, outline, sifted, type OutlineGroup } from '../../../src/present/numbers/outline';
import { nursery, text } from '../nursery';

const { model } = nursery();
const groups = outline(model.lines, model.cells);

const names = (shown: readonly OutlineGroup[]): string[] =>
  shown.map(({ name, lines }) => {
    const texts = lines.map((line) => (line.kind === 'cell' ? model.cells[line.cell]!.name : `(${line.label})`));
    return `${name}: ${texts.join(' ')}`;
  });

test('entries stand under their headings, text and refused rows where they are, the title not', () => {
  expect(names(groups)).toEqual([
    'Hands: wage move_time boards',
    'Plants: (Why a nursery?) heads heads_straight heads_nursery',
    'Money: price sales hands margin wage_twice (Again)',
  ]);
});

test('a row without a heading stays under the one before, and a heading that comes back goes on', () => {
  const { model: other } = nursery('name,formula,group\na,1,First\nb,2,Second\nc,3,First\nd,4,\n');
  const found = outline(other.lines, other.cells).map(({ name, lines }) => `${name} ${lines.length}`);
  expect(found).toEqual(['First 3', 'Second 1']);
});

describe('the list narrows', () => {
  test.each([
    ['to a word of a label', 'NURSERY', false, ['Hands: boards', 'Plants: heads_straight heads_nursery']],
    ['to a word of a name', 'move_t', false, ['Hands: move_time']],
    ['to several words in any order', 'year heads', false, ['Plants: heads']],
    ['to inputs', '', true, ['Hands: wage move_time boards', 'Plants: heads_straight heads_nursery', 'Money: price']],
    ['to nothing', 'tractor', false, []],
  ])('%s', (_claim, words, onlyInputs, expected) => {
    expect(names(sifted(groups, model, { words, onlyInputs }))).toEqual(expected);
  });

  test('and without a sieve stays the same list', () => {
    expect(sifted(groups, model, { words: ' ', onlyInputs: false })).toBe(groups);
  });
});

test('a new list takes over the groups and lines that say the same, so that their rows stay on the page', () => {
  const { model: changed } = nursery(text.replace('Why a nursery?', 'Why not?'));
  const after = keptLines(outline(changed.lines, changed.cells), groups);
  expect(after[0]).toBe(groups[0]);
  expect(after[1]).not.toBe(groups[1]);
  expect(after[1]!.lines.slice(1)).toEqual(groups[1]!.lines.slice(1));
  expect(after[1]!.lines[1]).toBe(groups[1]!.lines[1]);
});
