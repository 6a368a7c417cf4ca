/** Fixed texts of the picture of the batches. */
export const dotsTexts = {
  what: 'batches by their seconds a plant',
  dot: 'dot: a batch, larger with more plants',
  diamond: 'diamond: the mean',
  band: 'band: where it may lie',
  /** @param within in per cent */
  dashed: (within: string) => `dashed: ${within} % either way`,
  numbers: 'The batches behind the picture',
  batch: 'Batch',
  secondsEach: 's each, rated',
  againstMean: 'against the mean',
} as const;
