import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { ordering, reach, readers } from '../../src/model/graph';

/** What each node reads; `a:bc b: c:` is three nodes, a reading b and c. */
function reads(text: string): number[][] {
  const nodes = text.split(' ').map((node) => node.split(':') as [string, string]);
  const names = nodes.map(([name]) => name);
  return nodes.map(([, sources]) => Array.from(sources).map((source) => names.indexOf(source)));
}

function letters(text: string, ids: Iterable<number>): string {
  const names = text.split(' ').map((node) => node[0] ?? '');
  return [...ids].map((id) => names[id]).join('');
}

describe('the order', () => {
  it.each([
    ['a cell alone', 'a:', 'a'],
    ['what is read comes first', 'a:b b:c c:', 'cba'],
    ['file order where nothing is read', 'a: b: c:', 'abc'],
    ['a diamond is met once', 'a:bc b:d c:d d:', 'dbca'],
    ['a circle is in it too, after what it reads', 'a:az z:', 'za'],
    ['readers of a circle come after it', 'r:a a:a', 'ar'],
  ])('%s', (_claim, text, order) => {
    expect(letters(text, ordering(reads(text)).order)).toBe(order);
  });

  it('of nothing is nothing', () => {
    expect(ordering([])).toEqual({ order: [], cycles: [] });
  });

  it('puts every cell once, after all that it reads, in any graph without cycles', () => {
    const graph = fc.array(fc.array(fc.nat(30), { maxLength: 4 }), { maxLength: 30 });
    fc.assert(
      fc.property(graph, (wild) => {
        const downward = wild.map((sources, node) => [...new Set(sources)].filter((source) => source > node));
        const inside = downward.map((sources) => sources.filter((source) => source < wild.length));
        const { order, cycles } = ordering(inside);
        const places = new Map(order.map((node, place) => [node, place]));
        expect(cycles).toEqual([]);
        expect([...order].sort((a, b) => a - b)).toEqual(inside.map((_, node) => node));
        inside.forEach((sources, node) => {
          for (const source of sources) expect(places.get(source)).toBeLessThan(places.get(node) ?? -1);
        });
      }),
      { seed: 2, numRuns: 300 },
    );
  });
});

const graph = fc.array(fc.uniqueArray(fc.nat(12), { maxLength: 3 }), { minLength: 13, maxLength: 13 });

describe('a circle', () => {
  it.each([
    ['of one cell that reads itself', 'a:a', ['a']],
    ['of two', 'a:b b:a', ['ab']],
    ['of three is named whole, each reading the next', 'a:b b:c c:a', ['abc']],
    ['starts at the cell that stands first in the file', 'c:a a:b b:c', ['cab']],
    ['leaves out cells that only lead into it', 'z:a a:b b:a', ['ab']],
    ['leaves out cells that it only reads', 'a:bz b:a z:', ['ab']],
    ['is one for each knot', 'a:b b:a c:d d:c e:', ['ab', 'cd']],
    ['is named beside another that shares a cell with it', 'a:b b:ac c:b', ['ab', 'cb']],
    ['is the shortest one through that cell, and named once', 'a:bc b:a c:d d:a', ['ab', 'cda']],
    ['is none where two ways lead to one cell', 'a:bc b:d c:d d:', []],
  ])('%s', (_claim, text, cycles) => {
    expect(ordering(reads(text)).cycles.map(({ path }) => letters(text, path))).toEqual(cycles);
  });

  it('knows the cells that none before it names', () => {
    const members = ordering(reads('a:b b:ac c:b d:a')).cycles.map((circle) => circle.members);
    expect(members).toEqual([[0, 1], [2]]);
  });

  it('leaves none of the cells out that lie on any', () => {
    fc.assert(
      fc.property(graph, (wild) => {
        const onAny = wild.flatMap((sources, node) => (reach(sources, wild).has(node) ? [node] : []));
        const members = ordering(wild).cycles.flatMap((circle) => circle.members);
        expect([...members].sort((a, b) => a - b)).toEqual(onAny);
      }),
      { seed: 4, numRuns: 300 },
    );
  });

  it('is closed by real readings in any graph', () => {
    fc.assert(
      fc.property(graph, (wild) => {
        for (const { path } of ordering(wild).cycles) {
          path.forEach((node, i) => {
            expect(wild[node]).toContain(path[(i + 1) % path.length]);
          });
        }
      }),
      { seed: 3, numRuns: 300 },
    );
  });
});

describe('length', () => {
  const count = 10_000;
  const chain = Array.from({ length: count }, (_, node) => (node + 1 < count ? [node + 1] : []));

  it('a chain of 10,000 cells has an order', () => {
    const { order, cycles } = ordering(chain);
    expect(order[0]).toBe(count - 1);
    expect(order.at(-1)).toBe(0);
    expect(cycles).toEqual([]);
  });

  it('a circle of 10,000 cells is named whole', () => {
    const ring = chain.map((sources, node) => (node + 1 < count ? sources : [0]));
    expect(ordering(ring).cycles.map(({ path }) => path.length)).toEqual([count]);
  });
});

describe('ways through the graph', () => {
  it('readers are listed by what they read, in file order', () => {
    expect(readers(reads('a:c b:c c:'))).toEqual([[], [], [0, 1]]);
  });

  it.each([
    ['a cell reaches itself', 'a: b:', 'b', 'b'],
    ['and all that can be reached', 'a:b b:c c: d:', 'a', 'abc'],
    ['once, through a circle too', 'a:b b:a', 'a', 'ab'],
  ])('%s', (_claim, text, from, reached) => {
    const start = Array.from(from).map((name) => text.split(' ').findIndex((node) => node.startsWith(name)));
    expect(letters(text, [...reach(start, reads(text))].sort())).toBe(reached);
  });
});
