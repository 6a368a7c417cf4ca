/** Words round a week's work. */
export const weekTexts = {
  heading: 'Next week’s work',
  from: 'Week from',
  print: 'Print the week',
  saveCalendar: 'Save as a calendar file',
  /** @param start the first day of the year, written out */
  outside: (start: string) => `That week does not lie in the year that begins on ${start}.`,
  table: 'Table of the week’s work',
  day: 'day',
  what: 'what',
  date: 'date',
  task: 'task',
  fromStage: 'from',
  toStage: 'to',
  hours: 'hours',
  allHours: 'all hours',
} as const;
