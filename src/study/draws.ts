import type { CorrelationFactor } from '../model/correlation';
import type { Lever } from '../model/view';
import { distributionOf, type Distribution } from './distribution';
import { normalChance, normalQuantile } from './normal';
import { randomStream, type RandomStream } from './rng';

/** An uncertain input with its distribution. */
export interface Uncertain {
  readonly lever: Lever;
  readonly distribution: Distribution;
}

/** The distributions of levers that have a range. */
export function uncertainOf(levers: readonly Lever[]): Uncertain[] {
  return levers.flatMap((lever) =>
    lever.range === undefined ? [] : [{ lever, distribution: distributionOf(lever.range, lever.base) }],
  );
}

/** Chances are kept this far from 0 and 1, so that every quantile is finite. */
const nearest = 2 ** -53;

/** Correlated normal variables, each from a stream of its own. */
class NormalGroup {
  /** One column for each correlated cell, in the factor's order. */
  private readonly columns: readonly Float64Array[];
  private readonly streams: readonly RandomStream[];

  constructor(
    private readonly factor: CorrelationFactor,
    seed: number,
    block: number,
  ) {
    this.columns = factor.cells.map(() => new Float64Array(block));
    this.streams = factor.cells.map((cell) => randomStream(seed, cell));
  }

  /** Draws independent normals. */
  draw(count: number): void {
    this.streams.forEach((stream, k) => {
      const column = this.columns[k] as Float64Array;
      stream.fill(column, count);
      for (let i = 0; i < count; i += 1) column[i] = normalQuantile(column[i] as number);
    });
  }

  /** For each draw, the chance (cumulative probability) at which a cell's correlated normal variable lies. */
  chances(cell: number, out: Float64Array, count: number): void {
    const row = this.factor.lower[this.factor.cells.indexOf(cell)] as readonly number[];
    out.fill(0, 0, count);
    row.forEach((weight, k) => {
      const column = this.columns[k] as Float64Array;
      for (let i = 0; i < count; i += 1) out[i] = (out[i] as number) + weight * (column[i] as number);
    });
    for (let i = 0; i < count; i += 1) {
      out[i] = Math.min(Math.max(normalChance(out[i] as number), nearest), 1 - nearest);
    }
  }
}

/**
 * Random draws of uncertain inputs, block after block. Each input has a random stream of its own, chosen by its cell,
 * so its draws do not depend on which other inputs are drawn, and an input that two plans share is drawn once for both.
 * Rank correlations are made by a Gaussian copula (Clemen & Reilly, Management Science 45 (1999) 208-224): correlated
 * normal variables, each turned into its chance and that into the input's quantile.
 */
export class Draws {
  /** For each input, the chances drawn, uniform over 0 to 1. */
  readonly chances: readonly Float64Array[];
  /** For each input that is a share in %, how many draws so far lay below 0 or above 100. */
  readonly outside: Float64Array;
  private readonly group: NormalGroup | undefined;
  private readonly streams: readonly RandomStream[];

  /**
   * @param factor the correlations of all cells, where there are any
   * @param seed a whole number from 0 to 2^53 - 1
   * @param block the largest number of draws that one fill makes
   */
  constructor(
    private readonly inputs: readonly Uncertain[],
    private readonly factor: CorrelationFactor | undefined,
    seed: number,
    block: number,
  ) {
    this.chances = inputs.map(() => new Float64Array(block));
    this.outside = new Float64Array(inputs.length);
    this.streams = inputs.map(({ lever }) => randomStream(seed, lever.cell.id));
    const isCorrelated = inputs.some(({ lever }) => factor?.cells.includes(lever.cell.id));
    this.group = factor && isCorrelated ? new NormalGroup(factor, seed, block) : undefined;
  }

  /** Draws the next values of every input into its column. */
  fill(columns: readonly Float64Array[], count: number): void {
    this.group?.draw(count);
    this.inputs.forEach(({ lever, distribution }, k) => {
      const chances = this.chances[k] as Float64Array;
      const column = columns[k] as Float64Array;
      if (this.factor?.cells.includes(lever.cell.id)) this.group?.chances(lever.cell.id, chances, count);
      else (this.streams[k] as RandomStream).fill(chances, count);
      for (let i = 0; i < count; i += 1) column[i] = distribution.quantile(chances[i] as number);
      if (lever.cell.unitText === '%') this.outside[k] = (this.outside[k] as number) + countOutside(column, count);
    });
  }
}

function countOutside(column: Float64Array, count: number): number {
  let found = 0;
  for (let i = 0; i < count; i += 1) if ((column[i] as number) < 0 || (column[i] as number) > 100) found += 1;
  return found;
}
