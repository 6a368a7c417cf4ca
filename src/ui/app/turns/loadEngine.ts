import { nextTurn } from './slice';

/** Loads what computes, and has the browser make its first number format, some 20 ms each: in turns of their own. */
export async function loadEngine(): Promise<void> {
  await import('../../../files/readModel');
  await nextTurn();
  Intl.NumberFormat();
  await nextTurn();
}
