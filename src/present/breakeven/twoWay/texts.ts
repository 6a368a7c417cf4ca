/** Fixed texts of the two-way breakeven. */
export const twoWayTexts = {
  heading: 'Two inputs at once',
  noSecond: (result: string) => `There is no second input that moves ${result}.`,
  second: (first: string) => `as ${first} moves, and with it`,
  level: 'breakeven',
  below: (target: string) => `below ${target}`,
  orMore: (target: string) => `${target} or more`,
} as const;
