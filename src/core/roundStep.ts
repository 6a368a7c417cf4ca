import { decimal, type Decimal } from './number';

/** Round steps, which people count in, are these times a power of ten. */
const leads = [1, 2, 5] as const;

/**
 * Round steps in float64, ascending: five of them, from the power of ten at or below a size to beyond twice that size.
 * @param size above 0
 */
export function roundStepsFrom(size: number): number[] {
  const power = 10 ** Math.floor(Math.log10(size));
  return [...leads, 10, 20].map((times) => times * power);
}

/**
 * The least round step in float64 that reaches a size.
 * @param size above 0
 * @param share of the size that is enough: below 1, so that a size a hair above a round step gets that step
 */
export function roundStepAbove(size: number, share: number): number {
  return roundStepsFrom(size).find((step) => step >= size * share) ?? size;
}

function exactSteps(size: Decimal): Decimal[] {
  const power = decimal(10).pow(size.e);
  return [...leads, 10].map((times) => power.times(times));
}

/** The least round step that is not below a size, exactly; 1 for 0. */
export function exactStepAbove(size: Decimal): Decimal {
  return exactSteps(size).find((step) => step.gte(size))!;
}

/** The greatest round step that is not above a size, exactly; 1 for 0. */
export function exactStepBelow(size: Decimal): Decimal {
  const steps = exactSteps(size);
  return steps.findLast((step) => step.lte(size)) ?? steps[0]!;
}
