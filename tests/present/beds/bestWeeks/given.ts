import { evaluatePlan } from '../../../../src/model/values';
import type { View } from '../../../../src/model/view';
import type { Way } from '../../../../src/study/best';
import {
  bestWeeksRequest,
  chosenOf,
  stageOptions,
  type BestWeeksRequest,
  type BestChoice,
} from '../../../../src/present/beds/bestWeeks/options';
import { searchBestWeeks, type BestWeeksResult } from '../../../../src/present/beds/bestWeeks/search';
import { idOf, modelOf, planOf } from '../../../model/table';

/**
 * A bed of 100 boards in round numbers, 24 days in all, and a result `r`.
 * @param result a formula of early, late, holes, wide, and of the units one [day] and hole [plant/board]
 */
export const bed = (
  result: string,
  holes = 'holes [plant/board]: 60 | step: 5 | crop: stage 1 density | label: Holes',
): string => `
  boards [board]: 100 | crop: boards
  every [day]: 2 | crop: interval
  plants [plant]: 1
  ${holes}
  early [day]: 10 | step: 1 | crop: stage 1 time | label: Nursery time
  late [day]: 14 | crop: stage 2 time | label: Finishing time
  wide [plant/board]: 20 | crop: stage 2 density
  one [day]: 1
  hole [plant/board]: 1
  r [EUR/year]: ${result} | label: Margin | role: headline
  unit [EUR/year]: 1
`;

const usual: BestChoice = { stage: undefined, time: '', density: '', held: 'total' };

export function askOf(text: string, choice: Partial<BestChoice> = {}, way: Way = 'highest'): BestWeeksRequest {
  const model = modelOf(text);
  if (model.faults.length > 0) throw new Error(model.faults[0]?.message);
  const view: View = { model, result: idOf(model, 'r'), plan: planOf(model), against: undefined };
  const values = evaluatePlan(view.plan);
  const chosen = chosenOf(stageOptions(view, values), { ...usual, ...choice });
  const found = chosen && bestWeeksRequest(view, values, undefined, chosen, way);
  if (found === undefined) throw new Error('nothing to ask about');
  return found;
}

export function lookOf(text: string, choice: Partial<BestChoice> = {}, way: Way = 'highest'): BestWeeksResult {
  return [...searchBestWeeks(askOf(text, choice, way))].at(-1)!;
}
