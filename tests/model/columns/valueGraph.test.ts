import { describe, expect, it } from 'vitest';
import { ValueGraph } from '../../../src/model/columns/valueGraph';
import { functions } from '../../../src/formula/functions';

describe('a graph of values', () => {
  it('holds what is computed twice once', () => {
    const graph = new ValueGraph();
    const [x, y] = [graph.input(0), graph.input(1)];
    const product = graph.made('multiply', [x, y]);
    expect(graph.made('multiply', [x, y])).toBe(product);
    expect(graph.made('multiply', [y, x])).not.toBe(product);
    expect(graph.input(0)).toBe(x);
  });

  it.each<[claim: string, made: (graph: ValueGraph) => number, value: number]>([
    ['a sum', (graph) => graph.made('add', [graph.constant(2), graph.constant(3)]), 5],
    ['a comparison', (graph) => graph.made('less', [graph.constant(2), graph.constant(3)]), 1],
    ['what cannot be computed', (graph) => graph.made('divide', [graph.constant(1), graph.constant(0)]), NaN],
    ['a function', (graph) => graph.made('call', [graph.constant(9)], functions.get('sqrt')), 3],
    [
      'a function of what is not known',
      (graph) => graph.made('call', [graph.constant(NaN)], functions.get('abs')),
      NaN,
    ],
    [
      'an unknown condition',
      (graph) => graph.made('choose', [graph.constant(NaN), graph.input(0), graph.input(1)]),
      NaN,
    ],
  ])('turns what is made of numbers alone into a number: %s', (_claim, made, value) => {
    const graph = new ValueGraph();
    expect(graph.valueOf(made(graph))).toBe(value);
  });

  it.each<[claim: string, made: (graph: ValueGraph, x: number, y: number) => number, input: 0 | 1]>([
    ['times 1', (graph, x) => graph.made('multiply', [x, graph.constant(1)]), 0],
    ['1 times', (graph, x) => graph.made('multiply', [graph.constant(1), x]), 0],
    ['divided by 1', (graph, x) => graph.made('divide', [x, graph.constant(1)]), 0],
    ['to the power 1', (graph, x) => graph.made('power', [x, graph.constant(1)]), 0],
    ['the chosen arm', (graph, x, y) => graph.made('choose', [graph.constant(1), x, y]), 0],
    ['the other arm', (graph, x, y) => graph.made('choose', [graph.constant(0), x, y]), 1],
    ['true and', (graph, x) => graph.made('and', [graph.constant(1), x]), 0],
    ['false or', (graph, x) => graph.made('or', [graph.constant(0), x]), 0],
  ])('leaves out an operation that changes nothing: %s', (_claim, made, input) => {
    const graph = new ValueGraph();
    const inputs = [graph.input(0), graph.input(1)] as const;
    expect(made(graph, ...inputs)).toBe(inputs[input]);
  });

  it('keeps 0 and -0 apart, and one unknown number', () => {
    const graph = new ValueGraph();
    expect(graph.constant(0)).not.toBe(graph.constant(-0));
    expect(graph.constant(NaN)).toBe(graph.constant(NaN));
  });
});
