/** How far the picture around an entry goes, in steps each way. */
export const reaches = ['1', '2', '3', 'all'] as const;
export type Reach = (typeof reaches)[number];

/** Which way the arrows point: to the right, or down. */
export const directions = ['across', 'down'] as const;
export type Direction = (typeof directions)[number];
