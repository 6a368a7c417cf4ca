import { describe, expect, it } from 'vitest';
import { linksOf } from '../../../src/model/links/links';
import type { Model } from '../../../src/model/model';
import { createFormat } from '../../../src/present/text/numberFormat';
import { textOf } from '../../../src/present/text/phrase';
import type { Reach } from '../../../src/present/together/choices';
import { drawnAround, wholeDrawn } from '../../../src/present/together/drawn';
import { aroundSaid, wholeSaid } from '../../../src/present/together/sentences';
import { idOf, nursery } from '../nursery';

const format = createFormat('en');

/** What is said around an entry, with plain spaces. */
function around(name: string, reach: Reach = 'all', model: Model = nursery().model): string[] {
  const links = linksOf(model.plans);
  const middle = idOf(model, name);
  const drawn = { ...drawnAround(model.plans, links, middle, reach), middle };
  const { main, more } = aroundSaid(model, model.plans, links, drawn, format);
  return [main, more].map((phrase) => textOf(phrase).replaceAll('\u00a0', ' '));
}

function whole(text: string): string[] {
  const { model } = nursery(text);
  const links = linksOf(model.plans);
  const { main, more } = wholeSaid(model, model.plans, links, wholeDrawn(model, model.plans, links), format);
  return [main, more].map((phrase) => textOf(phrase).replaceAll('\u00a0', ' '));
}

describe('around an entry', () => {
  it('says on how many it hangs, and that nothing hangs on it', () => {
    expect(around('margin')).toEqual([
      'Margin hangs on 9 entries, 6 of them inputs; the longest way has 3 steps.',
      'Nothing is worked out from it.',
    ]);
  });

  it('says what hangs on an input', () => {
    expect(around('heads_nursery')).toEqual([
      'With a nursery is an input: it hangs on no other entry.',
      'It is used by 1 entry, and in the end 4 entries hang on it.',
    ]);
  });

  it('says of one input that it is one', () => {
    expect(around('wage_twice')[0]).toBe('Twice the wage hangs on 1 entry, an input; the longest way has 1 step.');
  });

  it('says how much of it is drawn', () => {
    expect(around('sales', '1')[1]).toBe(
      'It is used by 1 entry. 3 of these 5 entries are drawn; take more steps to see further.',
    );
  });

  it('says how many are left out', () => {
    const rows = Array.from({ length: 200 }, (_, i) => `x${i},X ${i},${i === 0 ? '1' : 'x0 + 1'}`);
    const { model } = nursery(['name,label,formula', ...rows, ''].join('\n'));
    expect(around('x0', 'all', model)[1]).toBe(
      'It is used by 199 entries. Only the nearest 150 are drawn: 50 entries further away are left out.',
    );
  });

  it('says that a circle lies in the way', () => {
    const { model } = nursery('name,label,formula\na,A,b\nb,B,a\nc,C,a + 1\n');
    expect(around('c', 'all', model)[0]).toBe(
      'C hangs on 2 entries, 0 of them inputs; one of the ways to it is a circle.',
    );
  });
});

describe('of the whole model', () => {
  it('says how many entries there are and how far it goes', () => {
    expect(whole('name,label,formula\na,A,1\nb,B,2 * a\nc,C,b + a\nd,D,5\n')).toEqual([
      'The model has 4 entries, 2 of them inputs; the longest way has 2 steps and leads to C.',
      '1 entry stands alone.',
    ]);
  });

  it('names the entries of a circle', () => {
    expect(whole('name,label,formula\na,A,b\nb,B,a\n')).toEqual([
      'The model has 2 entries, 0 of them inputs.',
      'A and B hang on one another in a circle, so that none of them can be worked out.',
    ]);
  });

  it('says that too many are not drawn, and what to do', () => {
    const rows = Array.from({ length: 1_200 }, (_, i) => `x${i},X ${i},${i === 0 ? '1' : `x${i - 1}`}`);
    expect(whole(['name,label,formula', ...rows, ''].join('\n'))).toEqual([
      'The model has 1,200 entries, 1 of them inputs; the longest way has 1,199 steps and leads to X 1199.',
      'So many are not drawn: a picture shows 150 at most. Look around one entry, or read the table.',
    ]);
  });
});
