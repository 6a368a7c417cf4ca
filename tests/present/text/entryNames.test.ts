import { describe, expect, it } from 'vitest';
import { namesAmong, namesById } from '../../../src/present/text/entryNames';
import { modelOf } from '../../model/table';

describe('an entry is named', () => {
  const { cells } = modelOf(
    [
      'a: 1 | label: List price | group: Foam',
      'b: 1 | label: List price | group: Peat',
      'c: 1 | label: Wage | group: Peat',
    ].join('\n'),
  );
  it('by its label, with its heading where another has the same label', () => {
    expect(cells.map(namesAmong(cells))).toEqual(['List price (Foam)', 'List price (Peat)', 'Wage']);
  });
  it('by its label alone where it has no heading', () => {
    const { cells: bare } = modelOf('a: 1 | label: Wage\nb: 2 | label: Wage');
    expect(bare.map(namesAmong(bare))).toEqual(['Wage', 'Wage']);
  });
  it('by its id, and by nothing where there is none of that id', () => {
    expect([1, 9].map(namesById(cells))).toEqual(['List price (Peat)', '']);
  });
});
