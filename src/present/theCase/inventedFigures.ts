import { wording } from '../../language/wording';
import type { Model } from '../../model/model';
import { figuresToOwn } from '../numbers/ownFigures';
import { namesAmong } from '../text/entryNames';
import { namesText } from '../text/namesText';

/** Names listed at most. */
const mostNamed = 5;

/**
 * How many of the figures that the headlines are made from are invented, by their sources; blank where none is.
 * @param plans those that a case compares, by index
 */
export function inventedNotice(model: Model, plans: readonly number[]): string {
  const compared = plans.flatMap((plan) => model.plans[plan] ?? []);
  const figures = figuresToOwn(model, compared, 'headlines');
  const invented = figures.filter(({ standing }) => standing === 'invented');
  if (invented.length === 0) return '';
  const rest = wording`They show how a case is made and decide nothing: put your own in their place.`;
  if (invented.length === figures.length)
    return wording`All ${figures.length} figures that the headlines rest on are invented. ${rest}`;
  const nameOf = namesAmong(figures.map(({ cell }) => cell));
  const labels = invented.map(({ cell }) => nameOf(cell));
  const names = namesText(labels, mostNamed);
  return invented.length === 1
    ? wording`1 of the ${figures.length} figures that the headlines rest on is invented: ${names}. It decides nothing: put your own in its place.`
    : wording`${invented.length} of the ${figures.length} figures that the headlines rest on are invented: ${names}. ${rest}`;
}
