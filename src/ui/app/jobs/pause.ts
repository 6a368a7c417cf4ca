/**
 * Milliseconds without a change after which heavier work starts. This is longer than from one keystroke to the next, so
 * that such work is not started in vain while somebody types.
 */
export const pause = 250;
