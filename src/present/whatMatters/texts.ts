/** The headings of What matters, and what its parts say beside what they found. */
export const whatMattersTexts = {
  chooser: 'What moves',
  switching: 'How wrong a guess may be',
  noSpread: 'No entry with a range touches it: there is no spread.',
  spider: 'Per cent for per cent',
  sideBySide: 'Side by side',
} as const;
