import { wording } from '../../language/wording';

/** Fixed texts of the picture of the batches. */
export const dotsTexts = {
  what: wording`batches by their seconds a plant`,
  dot: wording`dot: a batch, larger with more plants`,
  diamond: wording`diamond: the mean`,
  band: wording`band: where it may lie`,
  /** @param within in per cent */
  dashed: (within: string) => wording`dashed: ${within} % either way`,
  numbers: wording`The batches behind the picture`,
  batch: wording`Batch`,
  secondsEach: wording`s each, rated`,
  againstMean: wording`against the mean`,
} as const;
