import type { ShippedKey } from '../../../present/page/shippedModelTexts';

/** A model that comes with the program. */
export interface ShippedModel {
  /** Its file's name without the ending. */
  readonly key: ShippedKey;
  /** The text of its file. */
  readonly load: () => Promise<string>;
}

export const shippedModels: readonly [ShippedModel, ...ShippedModel[]] = [
  {
    key: 'transplant-hire',
    load: async () => (await import('../../../../models/transplant-hire.csv?raw')).default,
  },
  {
    key: 'density-lesson',
    load: async () => (await import('../../../../models/density-lesson.csv?raw')).default,
  },
  {
    key: 'plug-media',
    load: async () => (await import('../../../../models/plug-media.csv?raw')).default,
  },
  {
    key: 'three-stage',
    load: async () => (await import('../../../../models/three-stage.csv?raw')).default,
  },
  {
    key: 'channel-or-bench',
    load: async () => (await import('../../../../models/channel-or-bench.csv?raw')).default,
  },
];
