/** Headings of What matters, and fixed texts of its parts. */
export const whatMattersTexts = {
  heading: 'What matters',
  chooser: 'What moves',
  switching: 'How wrong a guess may be',
  drivers: 'Which guesses drive the spread',
  noSpread: 'No entry with a range touches it: there is no spread.',
  spider: 'Per cent for per cent',
  sideBySide: 'Side by side',
} as const;
