import { wording, wordingOf } from '../../language/wording';

/** Fixed texts of the terms: precision, confidence and allowance. */
export const termsTexts = {
  heading: wording`How sure, and with what allowance`,
  within: wording`within`,
  withinUnit: wording`% either way`,
  confidence: wording`confidence`,
  allowance: wording`allowance for rest and waiting`,
  /** @param number in per cent */
  stands: (number: string) => wording`${number} % stands.`,
  shareOf: wording`The allowance is a share of`,
  /** @param factor its effect on a time, `× 1.15` */
  job: (factor: string) => wording`the job (${factor})`,
  day: (factor: string) => wording`the day (${factor})`,
  all: wording`all of it`,
  /** In a column of their own. */
  of: {
    job: wordingOf('what an allowance is a share of')`job`,
    day: wordingOf('what an allowance is a share of')`day`,
  },
  shareExplained: wording`Of the job: so many minutes of rest on top of an hour’s work. Of the day: so many minutes out of each paid hour, which is more. Of the job is usual; say which when you quote a standard time.`,
  noTimeLeft: wording`An allowance of the whole day leaves no time to work: stay below 100 %.`,
  howItCounts: wording`How the allowance counts`,
} as const;
