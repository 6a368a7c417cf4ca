import { readModelText } from '../../src/files/readModel';
import type { Model } from '../../src/model/model';
import type { Origin } from '../../src/ui/app/store/snapshot';

/** A model file of two plans with all that the screens tell apart. */
export const text = [
  'name,label,unit,formula,low,high,step,group,role,note,source,plan: Straight,plan: Nursery',
  ',Does a nursery pay? A made-up farm,,,,,,,,A farm for tests.,,,',
  'wage,Wage,EUR/h,14.5,13,17,0.05,Hands,,,,,',
  'move_time,Move a plant,s/plant,12,9,16,,Hands,,,,,',
  'boards,Nursery boards,board,,,,1,Hands,,,,0,130',
  ',Why a nursery?,,,,,,Plants,,They stand closer.,,,',
  'heads,Heads a year,plant/year,heads_straight,,,,Plants,,,,,heads_nursery',
  'heads_straight,Without a nursery,plant/year,180000,,,,Plants,,,,,',
  'heads_nursery,With a nursery,plant/year,230000,,,,Plants,,,,,',
  'price,Price,EUR/plant,0.78,0.7,0.9,0.01,Money,,,,,',
  'sales,Sales,EUR/year,heads * price,,,,Money,headline,,,,',
  'hands,Hands,EUR/year,boards > 0 ? heads * move_time * wage : 0,,,,Money,,,,,',
  'margin,Margin,EUR/year,sales - hands,,,,Money,headline,,,,',
  'wage_twice,Twice the wage,EUR/h,2 * wage,,,,Money,,,,,',
  'wage,Again,,3,,,,Money,,,,,',
  '',
].join('\n');

export function nursery(changed = text): { model: Model; origin: Origin } {
  const { model, file } = readModelText(changed);
  const bytes = new TextEncoder().encode(changed);
  return { model, origin: { name: 'nursery.csv', shipped: '', opened: 1, bytes, file } };
}

/** The id of a cell; throws where the model has none of that name. */
export function idOf(model: Model, name: string): number {
  const id = model.ids.get(name);
  if (id === undefined) throw new Error(`no cell ${name}`);
  return id;
}
