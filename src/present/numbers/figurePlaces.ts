import { wording } from '../../language/wording';
import type { Cell } from '../../model/cell';
import type { Content } from '../../model/content';
import type { Model, Plan } from '../../model/model';
import { wordsOf } from '../../model/choices';
import type { Values } from '../../model/values';
import { namesText } from '../text/namesText';
import { numberWithUnit, type Format } from '../text/numberFormat';
import { referenceOf } from './remarks';

/** What a figure is in some plans, all of which hold the same. */
export interface FigurePlace {
  readonly plans: readonly Plan[];
  readonly content: Content;
}

/** A plan's own 0 says that the plan does not have the thing. */
function isNone(content: Content): boolean {
  return content.kind === 'input' && content.own && content.number.isZero();
}

/**
 * Where a figure stands for something: the plans that hold a number, or the name of an entry in the place of one, other
 * than a 0 of their own. None where it is a formula in the plans that have the thing: nobody gives that.
 */
export function figurePlaces(model: Model, plans: readonly Plan[], { id }: Pick<Cell, 'id'>): FigurePlace[] {
  const held = plans.flatMap((plan) => {
    const content = plan.contents[id];
    return content === undefined ? [] : [{ plan, content }];
  });
  const isGiven = (content: Content): boolean => content.kind === 'input' || referenceOf(model, content) !== undefined;
  const some = held.filter(({ content }) => isGiven(content) && !isNone(content));
  const isAll0 = held.every(({ content }) => isNone(content));
  const standing = isAll0 ? held.slice(-1) : some;
  const texts = [...new Set(standing.map(({ content }) => content.text))];
  return texts.flatMap((text) => {
    const same = standing.filter(({ content }) => content.text === text);
    return same.slice(0, 1).map(({ content }) => ({ plans: same.map(({ plan }) => plan), content }));
  });
}

/** A figure as it stands, behind it the plans that it is of where others hold something else. */
export function placeText(
  model: Model,
  values: readonly Values[],
  cell: Cell,
  { plans, content }: FigurePlace,
  format: Format,
): string {
  const plan = model.plans.findIndex(({ name }) => name === plans[0]?.name);
  const number = content.kind === 'input' ? content.number : values[plan]?.numbers[cell.id];
  const words = number === undefined ? undefined : wordsOf(cell, number);
  const written = content.kind === 'input' ? format.written(content.text) : number && format.value(number, cell.unit);
  const text = words ?? numberWithUnit(written ?? '', cell.unitText);
  const names = plans.map(({ name }) => name);
  return plans.length === model.plans.length ? text : wording`${text} in ${namesText(names, names.length)}`;
}
