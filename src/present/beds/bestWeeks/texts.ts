/** Words round the best weeks. */
export const bestWeeksTexts = {
  heading: 'Best weeks',
  looking: 'Looking for the best weeks …',
  whose: 'Look at',
  stage: 'Time on',
  held: 'As it moves',
  totalStays: 'the total time stays',
  /** @param boards those of the next stage */
  nextStays: (boards: string) => `time on ${boards} stays`,
  way: 'Best is the',
  highest: 'highest',
  lowest: 'lowest',
  timeBy: 'Time by',
  time: 'Time',
  densityBy: 'Density by',
  density: 'Density',
  worse: 'worse than today',
  /** @param density its name and unit */
  lines: (density: string) => `lines by ${density}, written at their ends`,
  best: 'best',
  todayIsBest: 'today, the best',
  asToday: 'as today',
} as const;
