/** Words of the links to how figures are worked out. */
export const methodLinkTexts = {
  usual: 'How this is worked out',
  /** For who hears a list of links, in which they must differ. */
  heard: (entry: string) => `How this is worked out: ${entry}`,
} as const;
