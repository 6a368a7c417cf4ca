import { modelOf } from '../model/table';
import { correlations } from '../../src/model/correlation';
import { uncertain } from '../../src/model/view';
import { Draws, uncertainOf, type Uncertain } from '../../src/study/draws';

/** A written model's uncertain inputs in its only plan, with what draws of them need. */
export function drawsOf(text: string, seed: number, block: number): { inputs: readonly Uncertain[]; draws: Draws } {
  const model = modelOf(text);
  const view = { model, result: 0, plan: model.plans[0]!, against: undefined };
  const inputs = uncertainOf(uncertain(view));
  return { inputs, draws: new Draws(inputs, correlations(model.cells, model.ids).factor, seed, block) };
}

/** So many draws of a written model's uncertain inputs, a column an input. */
export function drawn(text: string, seed: number, count: number, block = 512): Float64Array[] {
  const { inputs, draws } = drawsOf(text, seed, block);
  const columns = inputs.map(() => new Float64Array(count));
  for (let from = 0; from < count; from += block) {
    const here = Math.min(block, count - from);
    draws.fill(
      columns.map((column) => column.subarray(from, from + here)),
      here,
    );
  }
  return columns;
}
