import { describe, expect, it } from 'vitest';
import { decimal } from '../../../src/core/number';
import { createFormat } from '../../../src/present/text/numberFormat';
import { textOf } from '../../../src/present/text/phrase';
import { verdictPhrase } from '../../../src/present/theCase/verdict';
import type { CaseBudget } from '../../../src/present/theCase/caseOf';
import type { Closest } from '../../../src/present/theCase/closest';
import { cellNamed } from '../../../src/model/model';
import { modelOf } from '../../model/table';
import { spreadOf } from '../../../src/present/howSure/summary';

const move = cellNamed(modelOf('move [s/plant]: 12 | range: 9 16 | label: Move'), 'move')!;

function said(netChange: number, above: number, value?: number, certain = false): string {
  const results = Float64Array.from({ length: 100 }, (_, i) => i - (99.5 - above)).sort();
  const odds = {
    done: 100,
    failed: 0,
    spread: spreadOf(results, undefined, 0),
    certain,
    details: undefined,
    indices: undefined,
  };
  const hinges = value === undefined ? [] : [{ cell: move, base: decimal(12), value: decimal(value), inRange: true }];
  const closest = { hinges, inside: hinges.length } as unknown as Closest;
  const made = { netChange: decimal(netChange) } as CaseBudget;
  return textOf(verdictPhrase({ odds, closest }, made, ({ label }) => label, createFormat('en'))).replaceAll(
    '\u00a0',
    ' ',
  );
}

describe('the answer first', () => {
  it('pays where most draws do, and says what would change it', () =>
    expect(said(600, 93, 14.2)).toBe(
      'It pays: in 93 of 100 draws from all ranges at once. It would change with Move above 14.2 s per plant.',
    ));

  it('does not pay where few draws do', () =>
    expect(said(-600, 9, 9.5)).toBe(
      'It does not pay: it would in 9 of 100 draws from all ranges at once. It would change with Move below 9.5 s per plant.',
    ));

  it.each([
    [600, 21, 'it no longer pays'],
    [-600, 79, 'it pays'],
  ])('cannot be told between 20 and 80 of 100, whatever today’s numbers add (%d)', (netChange, above, then) =>
    expect(said(netChange, above, 14.2)).toBe(
      `It cannot be told yet whether it pays: it does in ${above} of 100 draws from all ranges at once. ` +
        `Find out first: Move. With it above 14.2 s per plant, ${then}.`,
    ),
  );

  it.each([
    [20, /^It does not pay/],
    [80, /^It pays/],
  ])('is told at %d of 100', (above, way) => expect(said(1, above, 14)).toMatch(way));

  it('where nothing is unsure or nothing turns it', () => {
    expect(said(600, 50, undefined, true)).toBe(
      'It pays, on the numbers as they stand. No entry by itself would change that.',
    );
    expect(said(-600, 50, 14, true)).toMatch(/^It does not pay, on the numbers as they stand\. It would change/);
    expect(said(600, 50)).toBe(
      'It cannot be told yet whether it pays: it does in 50 of 100 draws from all ranges at once.',
    );
  });
});
