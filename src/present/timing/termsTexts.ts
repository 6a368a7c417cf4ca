/** Fixed texts of the terms: precision, confidence and allowance. */
export const termsTexts = {
  heading: 'How sure, and with what allowance',
  within: 'within',
  withinUnit: '% either way',
  confidence: 'confidence',
  allowance: 'allowance for rest and waiting',
  /** @param number in per cent */
  stands: (number: string) => `${number} % stands.`,
  shareOf: 'The allowance is a share of',
  /** @param factor its effect on a time, `× 1.15` */
  job: (factor: string) => `the job (${factor})`,
  day: (factor: string) => `the day (${factor})`,
  all: 'all of it',
  shareExplained:
    'Of the job: so many minutes of rest on top of an hour’s work. Of the day: so many minutes out of each paid hour, which is more. Of the job is usual; say which when you quote a standard time.',
  noTimeLeft: 'An allowance of the whole day leaves no time to work: stay below 100 %.',
  howItCounts: 'How the allowance counts',
} as const;
