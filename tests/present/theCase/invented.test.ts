import { readdirSync, readFileSync } from 'node:fs';
import { describe, expect, it } from 'vitest';
import { readModelText } from '../../../src/files/readModel';
import { inventedNotice } from '../../../src/present/theCase/invented';
import { modelOf } from '../../model/table';

describe('invented figures', () => {
  it('are told of every shipped model', () => {
    for (const name of readdirSync('models').filter((file) => file.endsWith('.csv'))) {
      expect(inventedNotice(readModelText(readFileSync(`models/${name}`, 'utf8')).model), name).toMatch(
        /^Figures of an invented farm/,
      );
    }
  });

  it('are told by their sources where the title says nothing', () => {
    expect(inventedNotice(modelOf('- My farm\na: 1 | source: invented\nb: 2 | note: measured'))).toMatch(
      /^One entry says/,
    );
    expect(inventedNotice(modelOf('- My farm\na: 1 | source: invented\nb: 2 | note: invented'))).toMatch(
      /^2 entries say/,
    );
  });

  it('are not told where nothing says so', () =>
    expect(inventedNotice(modelOf('- My farm\na: 1 | source: measured'))).toBe(''));
});
