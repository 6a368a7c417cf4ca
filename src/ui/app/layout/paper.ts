import { createSignal } from 'solid-js';

const [wanted, want] = createSignal('');

/**
 * Says what is to be printed soon, so that all of it loads and computes though nobody scrolled to it.
 * @param elements a selector of what holds it; blank once it is printed
 */
export const wantOnPaper = (elements: string): void => void want(elements);

/** Whether an element belongs to what is to be printed soon. */
export const isWantedOnPaper = (element: Element | undefined): boolean =>
  wanted() !== '' && element !== undefined && element.closest(wanted()) !== null;

/** What works for the page now, in its worker or between frames: each piece of work under a sign of its own. */
export const underWay = new Set<object>();
