import { wording } from '../../../language/wording';
import { decimal, type Decimal } from '../../../core/number';
import { breakevenPrice } from '../../../trade/enterpriseBudget';
import { commonTexts } from '../../text/commonTexts';
import { figure, type DataTable } from '../../table/dataTable';
import { plainly, say, sentences, type Phrase } from '../../text/phrase';
import { printedUnit } from '../../text/printedUnit';
import { spoken } from '../../text/spokenNumber';
import { space, type Format } from '../../text/numberFormat';
import type { ForPlants, OnePlan } from './onePlan';
import { onePlanTexts } from './texts';

function plantsText({ cell }: ForPlants, plants: ForPlants['plants'], format: Format): string {
  const number = format.fixed(plants.ceil(), 0);
  return cell.unitText.startsWith('head') ? wording`${number}\u00a0heads` : wording`${number}\u00a0plants`;
}

function isKnown({ budget }: OnePlan): boolean {
  return budget.margin.isFinite();
}

/** What the plan leaves, over variable costs and over all. */
function marginPhrase({ budget, unit }: OnePlan, name: string, format: Format): Phrase {
  const { overVariable, margin } = budget;
  const [over, all] = [spoken(overVariable.abs(), unit, format), spoken(margin.abs(), unit, format)];
  if (overVariable.lt(0))
    return margin.lt(0)
      ? say`${name} lacks ${over} over its variable costs and ${all} over all costs.`
      : say`${name} lacks ${over} over its variable costs, and leaves ${all} over all costs.`;
  return margin.lt(0)
    ? say`${name} leaves ${over} over its variable costs, and lacks ${all} over all costs.`
    : say`${name} leaves ${over} over its variable costs and ${all} over all costs.`;
}

function enoughPhrase(plants: ForPlants, format: Format): Phrase {
  const { needs, each } = plants;
  const price = spoken(needs.price, each, format);
  if (needs.plants === undefined) {
    return say`at today’s price of ${price} no number of plants is enough, as each costs ${spoken(needs.variable, each, format)} by itself.`;
  }
  if (needs.plants.isZero()) return say`at today’s price of ${price} any number of plants is enough.`;
  const needed = plantsText(plants, needs.plants, format);
  return plants.plants.gte(needs.plants)
    ? say`at today’s price of ${price}, ${needed} are enough.`
    : say`at today’s price of ${price}, ${needed} would be enough.`;
}

function priceNeeded({ needs, plants }: ForPlants): ForPlants['plants'] {
  return breakevenPrice(needs, plants);
}

function breakevenPhrase(plants: ForPlants, format: Format): Phrase {
  const price = priceNeeded(plants);
  if (!price.isFinite()) return plainly(onePlanTexts.noPrice);
  const [today, enough] = [plantsText(plants, plants.plants, format), enoughPhrase(plants, format)];
  if (price.lte(0)) return say`At ${today} a year other returns pay all costs; ${enough}`;
  return say`At ${today} a year the price must be at least ${spoken(price, plants.each, format)}; ${enough}`;
}

/** What a plan leaves, the price it needs at its plants, and the plants it needs at its price. */
export function onePlanFinding(one: OnePlan, name: string, format: Format): Phrase {
  if (!isKnown(one)) return plainly(onePlanTexts.unknown);
  const { forPlants } = one;
  return sentences(
    marginPhrase(one, name, format),
    forPlants === undefined ? plainly(onePlanTexts.noPlants) : breakevenPhrase(forPlants, format),
  );
}

/** Shares of today’s yield as extension budgets print them. */
export const yieldShares = ['0.8', '1', '1.2'];

/** The prices that cover all costs at a fifth less, at today’s and at a fifth more plants. */
export function yieldTable({ forPlants }: OnePlan, format: Format): DataTable {
  const { share: against, yield: yields, price } = onePlanTexts.yieldHeads;
  const rows = (forPlants === undefined ? [] : yieldShares).map((share) => {
    const { plants: today, needs, each } = forPlants!;
    const plants = today.times(share);
    const more = decimal(share).minus(1).times(100);
    const least = breakevenPrice(needs, plants);
    const known = (number: Decimal, text: () => string): string => (number.isFinite() ? text() : commonTexts.noValue);
    return [
      figure(
        known(plants, () => format.fixed(plants, 0)),
        plants,
      ),
      figure(more.isZero() ? onePlanTexts.today : `${format.signed(more, undefined)}${space}%`, more, '%'),
      figure(
        known(least, () => spoken(least, each, format)),
        least,
        printedUnit(each.text),
      ),
    ];
  });
  return { caption: onePlanTexts.yields, columns: [{ name: yields }, { name: against }, { name: price }], rows };
}
