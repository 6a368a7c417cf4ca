import { describe, expect, it } from 'vitest';
import { linksOf } from '../../../src/model/links/links';
import { drawnAround, mostDrawn, wholeDrawn, type Drawn } from '../../../src/present/together/drawn';
import type { Reach } from '../../../src/present/together/choices';
import { idOf, nursery } from '../nursery';

const { model } = nursery();
const links = linksOf(model.plans);

function around(name: string, reach: Reach): Drawn {
  return drawnAround(model.plans, links, idOf(model, name), reach);
}

const named = ({ ids, places }: Drawn): string =>
  ids.map((id) => `${model.cells[id]!.name} ${places.get(id)}`).join(', ');

describe('the picture around an entry', () => {
  it('goes one step each way', () => {
    expect(named(around('sales', '1'))).toBe('heads -1, price -1, sales 0, margin 1');
  });

  it('goes further where that is asked for', () => {
    expect(named(around('sales', '2'))).toBe(
      'heads -1, heads_straight -2, heads_nursery -2, price -1, sales 0, margin 1',
    );
  });

  it('goes all the way', () => {
    expect(around('margin', 'all').ids).toHaveLength(10);
  });

  it('has every arrow between what it shows, with the plans in which it holds', () => {
    const { arrows } = around('heads', '1');
    expect(arrows.map(({ from, to, plans }) => [model.cells[from]!.name, model.cells[to]!.name, plans])).toEqual([
      ['heads', 'sales', [0, 1]],
      ['heads', 'hands', [0, 1]],
      ['heads_straight', 'heads', [0]],
      ['heads_nursery', 'heads', [1]],
    ]);
  });
});

it('the whole model has every entry, none of them in the middle', () => {
  const whole = wholeDrawn(model, model.plans, links);
  expect(whole).toMatchObject({ middle: undefined, leftOut: 0 });
  expect(whole.ids).toEqual(model.cells.map(({ id }) => id));
});

describe('of too many entries', () => {
  const count = 400;
  const rows = Array.from({ length: count }, (_, i) => `x${i},X ${i},${i === 0 ? '1' : 'x0 + 1'}`);
  const large = nursery(['name,label,formula', ...rows, ''].join('\n')).model;
  const itsLinks = linksOf(large.plans);

  it('none is drawn where all are asked for', () => {
    expect(wholeDrawn(large, large.plans, itsLinks)).toMatchObject({ ids: [], arrows: [], leftOut: count });
  });

  it('those nearest to the middle are drawn, and the others counted', () => {
    const { ids, leftOut } = drawnAround(large.plans, itsLinks, 0, 'all');
    expect(ids).toHaveLength(mostDrawn);
    expect(leftOut).toBe(count - mostDrawn);
  });
});

it('a circle is drawn around each of its entries', () => {
  const circle = nursery('name,label,formula\na,A,b\nb,B,c\nc,C,a\n').model;
  const { ids, arrows } = drawnAround(circle.plans, linksOf(circle.plans), 0, '1');
  expect(ids).toEqual([0, 1, 2]);
  expect(arrows).toHaveLength(3);
});
