import { wording } from '../../language/wording';

/** Fixed texts about all plans of a model of three or more. */
export const allPlansTexts = {
  odds: wording`Which plan is the best of all`,
  costs: wording`Costs in every plan`,
  bestRegion: wording`Which plan is the best where`,
  linesRegion: wording`The lines of all plans as numbers`,
  oddsRegion: wording`How often each plan is the best`,
  costsRegion: wording`Costs in every plan, side by side`,
  plan: wording`plan`,
  often: wording`best in, per cent of draws`,
  mean: wording`on average`,
  none: wording`none can be computed`,
  together: wording`together`,
  least: wording`least`,
  noValue: '–',
  noCosts: wording`The cost lines of the budget are not in one currency and rhythm, so they cannot be added up.`,
  /**
   * @param best as `bestOfResult` says it
   * @param exact whether the places are exact rather than float64
   */
  bestCaption: (best: string, exact: boolean) =>
    exact ? wording`Which plan has ${best}` : wording`Which plan has ${best} (being worked out exactly …)`,
} as const;
