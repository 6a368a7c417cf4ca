import type { BlockModel } from '../../src/study/sobolIndices';

/** A function of some numbers as a model of independent inputs. */
export function blockOf(inputs: number, f: (...x: number[]) => number, block = 128): BlockModel {
  const columns = Array.from({ length: inputs }, () => new Float64Array(block));
  const result = new Float64Array(block);
  const varied = new Float64Array(block);
  const fill = (out: Float64Array, from: readonly Float64Array[], count: number): void => {
    for (let i = 0; i < count; i += 1) out[i] = f(...from.map((column) => column[i]!));
  };
  return {
    block,
    inputs: columns,
    result,
    run: (count) => fill(result, columns, count),
    vary: (input, column, count) => {
      fill(
        varied,
        columns.map((own, i) => (i === input ? column : own)),
        count,
      );
      return varied;
    },
  };
}

/** Evenly spread between two ends. */
export function evenly(low: number, high: number): { readonly quantile: (p: number) => number } {
  return { quantile: (p) => low + p * (high - low) };
}
