import type { Decimal } from '../../src/core/number';
import { lever, type Lever } from '../../src/model/view';
import { asked, idOf, modelOf } from '../model/table';

/** An input that stands at a number, with a range of its own where one is given; the number may lie outside of it. */
export function leverOf(base: Decimal, low?: Decimal, high?: Decimal, unit = ''): Lever {
  const model = modelOf(`a [${unit}]: 1`);
  const found = lever(asked(model, 'a').view, idOf(model, 'a'))!;
  const range = low && high && { low, high, shape: 'triangular' as const };
  return { ...found, base, range };
}
