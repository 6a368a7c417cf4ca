/** Words beside an entry that is a limit, and none at 0. */
export const limitTexts = {
  noLimit: 'no limit',
  none: 'none',
  /** The same to those who hear it. */
  lift: (label: string) => `none: no limit for ${label}`,
} as const;
