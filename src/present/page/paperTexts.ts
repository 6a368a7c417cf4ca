/** What is said while printing waits. */
export const paperTexts = {
  waiting: 'It is printed as soon as everything on it is worked out.',
  now: 'Print what there is',
  not: 'Do not print',
} as const;
