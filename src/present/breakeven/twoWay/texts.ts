import { wording } from '../../../language/wording';

/** Fixed texts of the two-way breakeven. */
export const twoWayTexts = {
  heading: wording`Two inputs at once`,
  noSecond: (result: string) => wording`There is no second input that moves ${result}.`,
  second: (first: string) => wording`as ${first} moves, and with it`,
  level: wording`breakeven`,
  below: (target: string) => wording`below ${target}`,
  orMore: (target: string) => wording`${target} or more`,
} as const;
