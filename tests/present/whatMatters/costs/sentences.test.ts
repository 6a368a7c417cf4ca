import { takenRows } from '../../../../src/present/table/takenOut';
import { describe, expect, it } from 'vitest';
import { question } from '../../../../src/model/response';
import { evaluatePlan } from '../../../../src/model/values';
import { lever } from '../../../../src/model/view';
import { textOf } from '../../../../src/present/text/phrase';
import { createFormat } from '../../../../src/present/text/numberFormat';
import { candidates, chosenOnes, most } from '../../../../src/present/whatMatters/costs/candidates';
import { costsLines, type CostsRequest, type CostsLines } from '../../../../src/present/whatMatters/costs/lines';
import { changeRows, costsRows, costsTable } from '../../../../src/present/whatMatters/costs/table';
import { costsSentence } from '../../../../src/present/whatMatters/costs/sentences';
import { idOf, modelOf, planOf } from '../../../model/table';

const english = createFormat('en-GB');

/** Foam costs its price and 0.02 of hands; a holder 0.08 whatever foam costs; a wick as much as three foams. */
const plugs = [
  'foam [GBP/plug]: 0.04 | range: 0.02 0.06 | label: Foam price',
  'need [plug/plant]: 1',
  'foam_cost [GBP/plant]: foam * need + hands | label: Foam: cost',
  'hands [GBP/plant]: 0.02',
  'holder_cost [GBP/plant]: hands * 4 | label: Holder: cost',
  'wick_cost [GBP/plant]: foam * need * 3 | label: Wick: cost',
  'much [GBP/year]: foam_cost * year',
  'year [plant/year]: 1000',
].join('\n');

function subject(text: string, input = 'foam'): CostsRequest {
  const model = modelOf(text);
  if (model.faults.length > 0) throw new Error(model.faults[0]!.message);
  const plan = planOf(model);
  const values = evaluatePlan(plan);
  const moved = lever({ model, result: 0, plan, against: undefined }, idOf(model, input))!;
  const results = candidates(model, plan).map((cell) => ({
    cell,
    response: question({ model, result: cell.id, plan, against: undefined }, values, undefined).response([moved]),
  }));
  return { lever: moved, results };
}

function found(ask: CostsRequest): CostsLines[] {
  return [...costsLines(ask)].filter((one) => one !== undefined);
}

function said(ask: CostsRequest): string {
  const { stretches } = found(ask).at(-1)!;
  const moves = ask.results.some(({ response }) => response.depends);
  const matter = {
    lever: ask.lever,
    cells: ask.results.map(({ cell }) => cell),
    today: ask.results.map(({ response }) => response.base),
    stretches: moves ? stretches : undefined,
  };
  return textOf(costsSentence(matter, english)).replaceAll('\u00a0', ' ');
}

describe('what can stand side by side', () => {
  const names = (text: string): string[] => {
    const model = modelOf(text);
    return candidates(model, planOf(model)).map(({ name }) => name);
  };
  it('is money for each of one thing that is counted', () => {
    expect(names(plugs)).toEqual(['foam_cost', 'holder_cost', 'wick_cost']);
  });
  it('is of the unit with the most headlines', () => {
    const each =
      'a [GBP/plug]: b\nb [GBP/plug]: c\nc [GBP/plug]: 1\nd [GBP/plant]: 2 * e | role: headline\ne [GBP/plant]: 1';
    expect(names(each)).toEqual(['d']);
    expect(names(each.replace(' | role: headline', ''))).toEqual(['a', 'b']);
  });
  it('is nothing where there is no such result', () => expect(names('a [h]: 1\nb [h]: a')).toEqual([]));

  const cells = (text: string): ReturnType<typeof candidates> => {
    const model = modelOf(text);
    return candidates(model, planOf(model));
  };
  const many = Array.from({ length: 8 }, (_, k) => `r${k} [GBP/plant]: x * ${k} | group: ${k < 2 ? 'Few' : 'Many'}`);
  it('begins with the fullest heading, of which no more than can be told apart', () => {
    const all = cells(['x [GBP/plant]: 1', ...many].join('\n'));
    expect(chosenOnes(all, []).map(({ name }) => name)).toEqual(['r2', 'r3', 'r4', 'r5', 'r6', 'r7']);
    const every = all.map(({ name }) => name);
    expect(chosenOnes(all, every)).toHaveLength(most);
  });
  it('begins with the headlines where there are two', () => {
    const all = cells(
      ['x [GBP/plant]: 1', ...many.map((line, k) => (k % 3 === 0 ? `${line} | role: headline` : line))].join('\n'),
    );
    expect(chosenOnes(all, []).map(({ name }) => name)).toEqual(['r0', 'r3', 'r6']);
    expect(chosenOnes(all, ['r4', 'gone']).map(({ name }) => name)).toEqual(['r4']);
  });
});

describe('the sentence says', () => {
  // Three foams cost as much as a foam and 0.02 at 0.01; foam and 0.02 meet the holder's 0.08 at 0.06.
  it('which is the cheapest today, and where another one is', () => {
    expect(said(subject(plugs))).toBe(
      'Foam: cost is cheapest today, at 0.0600 GBP per plant. ' +
        'As Foam price rises, Wick: cost is cheapest below 0.0100 GBP per plug, then Foam: cost up to 0.0600 GBP per plug, then Holder: cost.',
    );
  });
  it('how far it stays so', () => {
    expect(said(subject(plugs.replace('* 3', '* 300').replace('0.02 0.06', '0.03 0.06')))).toMatch(
      /As Foam price rises it stays so up to 0\.0600 GBP per plug, then Holder: cost\.$/,
    );
  });
  it('that it stays so throughout', () => {
    expect(said(subject(plugs.replace('hands * 4', 'hands * 40').replace('need * 3', 'need + hands * 2')))).toMatch(
      /It stays so as Foam price moves from .+ to .+ GBP per plug\.$/,
    );
  });
  it('that the input moves none', () => {
    expect(said(subject(plugs, 'year'))).toMatch(/year moves none of them\.$/);
  });
  it('lowest where not all are costs', () => {
    const worth = plugs.replace('wick_cost', 'wick_worth').replace('label: Wick: cost', 'label: Wick');
    expect(said(subject(worth))).toContain('Foam: cost is lowest today');
  });
});

describe('the numbers', () => {
  const ask = subject(plugs);
  const cells = ask.results.map(({ cell }) => cell);
  const [quick, exact] = found(ask);
  it('come in float64 first, then exactly', () => {
    expect([quick!.exact, exact!.exact]).toEqual([false, true]);
    expect(quick!.stretches.map(({ curve }) => curve)).toEqual(exact!.stretches.map(({ curve }) => curve));
    const off = quick!.stretches.map(({ to }, i) => to.minus(exact!.stretches[i]!.to).abs().toNumber());
    expect(Math.max(...off)).toBeLessThan(1e-9);
  });
  it('of the rows hold today and name the lowest', () => {
    const rows = costsRows(exact!.rows, cells, english);
    expect(
      rows
        .filter(({ input }) => input.note === 'today')
        .map(({ input, values, lowest }) => [input.text, ...values.map(({ text }) => text), lowest]),
    ).toEqual([['0.04', '0.060', '0.080', '0.120', 'Foam: cost']]);
  });
  it('of the changes are those of the sentence', () => {
    const rows = changeRows(exact!.stretches, cells, ask.lever.cell, english);
    expect(rows.map(({ lowest }) => lowest)).toEqual(['Wick: cost', 'Foam: cost', 'Holder: cost']);
    expect(rows[1]!.at.replaceAll('\u00a0', ' ')).toBe('0.0100 GBP/plug – 0.0600 GBP/plug');
  });
  it('of the file have all digits', () => {
    const table = costsTable(costsRows(exact!.rows, cells, english), cells, ask.lever.cell, {
      caption: 'Side by side',
      word: 'cheapest',
    });
    const [head, ...rows] = takenRows(table, 'all', english);
    expect(head).toEqual([
      'Foam price, GBP/plug',
      'Foam: cost, GBP/plant',
      'Holder: cost, GBP/plant',
      'Wick: cost, GBP/plant',
      'cheapest',
    ]);
    expect(rows).toHaveLength(exact!.rows.length);
    expect(rows.find(([x]) => typeof x === 'object' && x.number === '0.04')).toEqual([
      { number: '0.04' },
      { number: '0.06' },
      { number: '0.08' },
      { number: '0.12' },
      'Foam: cost',
    ]);
  });
});
