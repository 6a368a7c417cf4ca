import { readdirSync, readFileSync } from 'node:fs';
import { describe, expect, it } from 'vitest';
import { readModelText } from '../../../src/files/readModel';
import { inventedTold } from '../../../src/ui/theCase/inventedTold';
import { modelOf } from '../../model/table';

describe('invented figures', () => {
  it('are told of every shipped model', () => {
    for (const name of readdirSync('models').filter((file) => file.endsWith('.csv'))) {
      expect(inventedTold(readModelText(readFileSync(`models/${name}`, 'utf8')).model), name).toMatch(
        /^Figures of an invented farm/,
      );
    }
  });

  it('are told by their sources where the title says nothing', () => {
    expect(inventedTold(modelOf('- My farm\na: 1 | source: invented\nb: 2 | note: measured'))).toMatch(
      /^One entry says/,
    );
    expect(inventedTold(modelOf('- My farm\na: 1 | source: invented\nb: 2 | note: invented'))).toMatch(
      /^2 entries say/,
    );
  });

  it('are not told where nothing says so', () =>
    expect(inventedTold(modelOf('- My farm\na: 1 | source: measured'))).toBe(''));
});
