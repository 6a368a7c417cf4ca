import { randomStream } from '../../src/study/rng';

/** Numbers evenly between 0 and 1, one a call; the same ones for the same seed. */
export function uniforms(seed: number): () => number {
  const stream = randomStream(seed, 0);
  const one = new Float64Array(1);
  return () => {
    stream.fill(one, 1);
    return one[0]!;
  };
}
