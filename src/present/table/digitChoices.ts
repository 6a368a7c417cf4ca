/** With which digits numbers leave the program: rounded as they are shown, or all that there are. */
export const digitChoices = ['shown', 'all'] as const;
export type Digits = (typeof digitChoices)[number];
