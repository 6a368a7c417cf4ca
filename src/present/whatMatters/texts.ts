import { wording } from '../../language/wording';

/** The headings of What matters, and what its parts say beside what they found. */
export const whatMattersTexts = {
  chooser: wording`What moves`,
  switching: wording`How wrong a guess may be`,
  noSpread: wording`No entry with a range touches it: there is no spread.`,
  spider: wording`Per cent for per cent`,
  sideBySide: wording`Side by side`,
} as const;
