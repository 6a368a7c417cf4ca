import { wording, wordingOf } from '../../../language/wording';

/** Words round the best weeks. */
export const bestWeeksTexts = {
  heading: wording`Best weeks`,
  looking: wording`Looking for the best weeks …`,
  whose: wording`Look at`,
  stage: wording`Time on`,
  held: wording`As it moves`,
  totalStays: wording`the total time stays`,
  /** @param boards those of the next stage */
  nextStays: (boards: string) => wording`time on ${boards} stays`,
  way: wording`Best is the`,
  highest: wordingOf('best is the')`highest`,
  lowest: wordingOf('best is the')`lowest`,
  timeBy: wording`Time by`,
  time: wording`Time`,
  densityBy: wording`Density by`,
  density: wording`Density`,
  worse: wording`worse than today`,
  /** @param density its name and unit */
  lines: (density: string) => wording`lines by ${density}, written at their ends`,
  best: wording`best`,
  todayIsBest: wording`today, the best`,
  asToday: wording`as today`,
} as const;
