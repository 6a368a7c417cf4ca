import { expect, it } from 'vitest';
import { evaluatePlan } from '../../../src/model/values';
import { plantsOfYear } from '../../../src/present/results/plantsOfYear';
import { modelOf } from '../../model/table';

function found(text: string): string {
  const model = modelOf(text);
  const plants = plantsOfYear(
    model,
    model.plans.map((plan) => evaluatePlan(plan)),
  );
  return plants === undefined ? '' : [plants.cell.name, plants.noun, ...plants.counts.map(String)].join(' ');
}

it.each([
  ['heads [head/year]: 5\n sales [EUR/year]: heads * price\n price [EUR/head]: 2', 'heads head 5'],
  [
    'weeks [week/year]: 50\n sown [plant/week]: 4\n cut [plant/week]: sown * 1 | in A: 3 | in B: sown',
    'cut plant 150 200',
  ],
  ['boards [board]: 5', ''],
  [
    'started [plant/year]: 10\n sold [plant/year]: started * 0.9\n pots [EUR/year]: started * price | budget: cost\n' +
      'seeds [EUR/year]: started * price | budget: cost\n price [EUR/plant]: 2\n' +
      'sales [EUR/year]: sold * price | budget: return',
    'sold plant 9',
  ],
])('plants of a year: %j', (text, expected) => expect(found(text)).toBe(expected));
