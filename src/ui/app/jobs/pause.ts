/**
 * Work that is not done in the frame of a keystroke starts when nothing has changed for so long, in milliseconds: more
 * than from one keystroke to the next, so that it does not run, and is not begun in vain, while somebody types.
 */
export const pause = 250;
