import { buildModel } from '../../../src/model/buildModel';
import type { Model } from '../../../src/model/model';
import { evaluatePlan, type Values } from '../../../src/model/values';
import { createFormat } from '../../../src/present/text/numberFormat';
import { textOf, type Phrase } from '../../../src/present/text/phrase';
import { sheetOf } from '../../model/table';

export const format = createFormat('en-GB');

/** A phrase as a person reads it, with plain spaces. */
export function read(phrase: Phrase): string {
  return textOf(phrase).replaceAll('\u00a0', ' ');
}

/** Four ways to buy a plug, by the wage: the costs of a plant cross one another. */
export const fourMedia = `
  plants [plant/year]: 100000
  wage [USD/h]: 18 | range: 16 22
  time [s/plant]: 2.8 | in Foam: 2.8 | in Rockwool: 3 | in Holder: 5.5 | in Peat: 2.2
  plug [USD/plant]: 0.036 | in Foam: 0.036 | in Rockwool: 0.03 | in Holder: 0.02 | in Peat: 0.045
  plugs_year [USD/year]: plants * plug | label: Plugs | budget: cost
  hands_year [USD/year]: plants * time * wage | label: Hands | budget: cost
  sales [USD/year]: plants * 0.4 * one | budget: return
  one [USD/plant]: 1
  cost_plant [USD/plant]: (plugs_year + hands_year) / plants | label: Cost of a plant | role: headline
  margin [USD/year]: sales - plugs_year - hands_year | label: Margin | role: headline`;

/** A written model with the values of its plans. */
export function worked(text = fourMedia): { model: Model; values: Values[] } {
  const model = buildModel(sheetOf(text));
  return { model, values: model.plans.map((plan) => evaluatePlan(plan)) };
}
