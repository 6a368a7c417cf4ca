import type { Switch } from '../../../../src/present/whatMatters/switching/switchingInput';
import { describe, expect, it } from 'vitest';
import { decimal } from '../../../../src/core/number';
import { textOf, type Phrase } from '../../../../src/present/text/phrase';
import { createFormat } from '../../../../src/present/text/numberFormat';
import { readSwitches, switchingSearch } from '../../../../src/jobs/switchingSearch';
import { done } from '../../../jobs/done';
import { changeText, switchLines, switchSentence } from '../../../../src/present/whatMatters/switching/sentences';
import { idOf, modelOf } from '../../../model/table';

const english = createFormat('en-GB');
const plain = (phrase: Phrase): string => textOf(phrase).replaceAll('\u00a0', ' ');

const bare = ({ label }: Switch['cell']): string => label;

function search(text: string): Switch[] {
  const model = modelOf(text);
  if (model.faults.length > 0) throw new Error(model.faults[0]!.message);
  const subject = { result: idOf(model, 'r'), plan: 0, against: undefined };
  return readSwitches(done(switchingSearch, model.sheet, { subject, target: '0' }).found, model.cells);
}

// 100 heads at 2 EUR less 150 EUR: 0 at a price of 1.5 (-25 %), at 75 heads (-25 %), and at costs of 200 (+33.3 %).
const stand = [
  'costs [EUR]: 150 | label: Costs',
  'price [EUR/plant]: 2 | range: 1.6 2.2 | label: Price',
  'heads [plant]: 100 | label: Heads',
  'idle: 3 | label: Idle',
  'r [EUR]: price * heads - costs | label: Margin',
].join('\n');

describe('switching values', () => {
  it('come with the thinnest margin first', () => {
    const found = search(stand);
    expect(found.map(({ cell }) => cell.label)).toEqual(['Price', 'Heads', 'Costs', 'Idle']);
    expect(found.map(({ value }) => value?.toNumber())).toEqual([1.5, 75, 200, undefined]);
  });
  it('are told with the change, and plainly where an entry cannot flip it', () => {
    const lines = switchLines(search(stand), bare, english);
    expect(lines.map(({ flips, change }) => `${flips.text} ${change.text}`.replaceAll('\u00a0', ' ').trim())).toEqual([
      '1.5 EUR/plant \u221225 %',
      '75 plants \u221225 %',
      '200 EUR +33 %',
      'cannot flip it',
    ]);
  });
  it('are summed up by the thinnest', () => {
    expect(plain(switchSentence(search(stand), bare, english))).toBe(
      'Price has the thinnest margin: at 1.50 EUR per plant, \u221225 % from today, the answer flips. 1 of 4 entries cannot flip it.',
    );
  });
  it('name an entry apart from another with its label', () => {
    const found = search('a: 2 | label: Price | group: Foam\nb: 3 | label: Price | group: Peat\nr: a * b - 3');
    const nameOf = ({ label, group }: Switch['cell']): string => `${label} (${group})`;
    expect(switchLines(found, nameOf, english).map(({ name }) => name)).toEqual(['Price (Foam)', 'Price (Peat)']);
    expect(plain(switchSentence(found, nameOf, english))).toMatch(/^Price \(Foam\) has the thinnest margin/);
  });
  it('are choices by their words', () => {
    const found = search('x: 1 | choices: 1 foam; 2 peat | label: Plug\nr: 1.5 - x');
    expect(
      switchLines(found, bare, english).map(({ today, flips, change }) => [today.text, flips.text, change.text]),
    ).toEqual([['foam', 'peat', '']]);
    expect(plain(switchSentence(found, bare, english))).toBe('Plug flips the answer by itself: with peat.');
  });
  it('of a share say of what their per cent are', () => {
    expect(plain(switchSentence(search('x [%]: 80 | label: Kept\nr: x - 0.6'), bare, english))).toBe(
      'Kept has the thinnest margin: at 60 %, a change of \u221225 % of today’s number, the answer flips.',
    );
  });
  it('may not exist', () => {
    expect(plain(switchSentence(search('a: 3\nr: a * a + 1'), bare, english))).toMatch(
      /^No entry by itself can flip the answer/,
    );
  });
  it('never round a change to nothing', () => {
    expect(
      ['0.02', '-3.14', '12.6', '0'].map((text) => changeText(decimal(text), english).replaceAll('\u00a0', ' ')),
    ).toEqual(['less than 0.1 %', '\u22123.1 %', '+13 %', '0.0 %']);
  });
});
