/** Fixed texts of a heat picture. */
export const heatTexts = {
  /** @param step from one shade to the next */
  eachShade: (step: string) => `each shade ${step}`,
} as const;
