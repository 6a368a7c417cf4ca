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
    load: async () => (await import('../../models/transplant-hire.csv?raw')).default,
  },
];
