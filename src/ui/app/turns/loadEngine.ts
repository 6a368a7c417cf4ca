import { nextTurn } from './slice';

/**
 * Loads what reads formulas and what computes, and has the browser make its first number format, some 10 to 20 ms each:
 * in turns of their own.
 */
export async function loadEngine(): Promise<void> {
  await import('../../../formula/mathParser');
  await nextTurn();
  await import('../../../files/readModel');
  await nextTurn();
  Intl.NumberFormat();
  await nextTurn();
}
