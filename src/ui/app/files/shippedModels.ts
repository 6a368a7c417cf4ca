/** A model that comes with the program. */
export interface ShippedModel {
  /** Its file's name without the ending. */
  readonly key: string;
  /** The question that it answers. */
  readonly question: string;
  readonly about: string;
  /** The text of its file. */
  readonly load: () => Promise<string>;
}

export const shippedModels: readonly [ShippedModel, ...ShippedModel[]] = [
  {
    key: 'transplant-hire',
    question: 'Does it pay to hire a transplanter?',
    about: 'Straight to finishing boards, or a crowded nursery first and a hand to move each plant.',
    load: async () => (await import('../../../../models/transplant-hire.csv?raw')).default,
  },
  {
    key: 'density-lesson',
    question: 'How many boards should the nursery have?',
    about: 'A lesson for paper and pencil: one spacing, two spacings, and a shortcut that misleads.',
    load: async () => (await import('../../../../models/density-lesson.csv?raw')).default,
  },
  {
    key: 'plug-media',
    question: 'What may a plug cost?',
    about: 'Foam, peat or a holder that comes back: cost for a finished plant, and the dearest price that still ties.',
    load: async () => (await import('../../../../models/plug-media.csv?raw')).default,
  },
  {
    key: 'three-stage',
    question: 'Is a second move worth it?',
    about: 'One, two or three board widths, whole boards and the hands for each move.',
    load: async () => (await import('../../../../models/three-stage.csv?raw')).default,
  },
  {
    key: 'channel-or-bench',
    question: 'Should pots stand pot to pot before they are spaced?',
    about: 'The same arithmetic on benches or channels that cost money by area and week.',
    load: async () => (await import('../../../../models/channel-or-bench.csv?raw')).default,
  },
];
