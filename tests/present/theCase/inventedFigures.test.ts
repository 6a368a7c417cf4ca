import { readFileSync } from 'node:fs';
import { describe, expect, it } from 'vitest';
import { readModelText } from '../../../src/files/readModel';
import { inventedNotice } from '../../../src/present/theCase/inventedFigures';
import { modelOf } from '../../model/table';

const said = (text: string): string => {
  const model = modelOf(text);
  return inventedNotice(model, [...model.plans.keys()]);
};

describe('invented figures in a case', () => {
  it('are counted by figure, and named', () => {
    const { model } = readModelText(readFileSync('models/transplant-hire.csv', 'utf8'));
    expect(inventedNotice(model, [...model.plans.keys()])).toMatch(
      /^\d+ of the \d+ figures that the headlines rest on are invented: Nursery time, if there is one, .* and \d+ more\. They show/,
    );
  });

  it('are only those that a headline is made from', () => {
    const farm = '- My farm\na: 1 | source: invented\nb: 2 | source: entered 3 May 2026\nc: 5 | source: invented';
    expect(said(`${farm}\nr: a + b | role: headline`)).toBe(
      '1 of the 2 figures that the headlines rest on is invented: a. It decides nothing: put your own in its place.',
    );
    expect(said(`${farm}\nr: a + c | role: headline`)).toMatch(
      /^All 2 figures that the headlines rest on are invented/,
    );
  });

  it('are not told where no source says so, whatever the title says', () => {
    expect(said('- An invented farm\na: 1 | source: entered 3 May 2026\nr: a | role: headline')).toBe('');
  });
});
