/** Words of a picture in shades. */
export const heatTexts = {
  /** @param step from one shade to the next */
  eachShade: (step: string) => `each shade ${step}`,
} as const;
