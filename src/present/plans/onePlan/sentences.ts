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
  const noun = cell.unitText.startsWith('head') ? 'heads' : 'plants';
  return `${format.fixed(plants.ceil(), 0)}${space}${noun}`;
}

function isKnown({ budget }: OnePlan): boolean {
  return budget.margin.isFinite();
}

/** What the plan leaves, over variable costs and over all. */
function marginPhrase({ budget, unit }: OnePlan, name: string, format: Format): Phrase {
  const { overVariable, margin } = budget;
  const amount = (value: typeof margin): string => spoken(value.abs(), unit, format);
  const verb = (value: typeof margin): Phrase => plainly(value.lt(0) ? 'lacks' : 'leaves');
  const over = say`${name} ${verb(overVariable)} ${amount(overVariable)} over its variable costs`;
  return overVariable.lt(0) === margin.lt(0)
    ? say`${over} and ${amount(margin)} over all costs.`
    : say`${over}, and ${verb(margin)} ${amount(margin)} over all costs.`;
}

function enoughPhrase(plants: ForPlants, format: Format): Phrase {
  const { needs, each } = plants;
  const price = spoken(needs.price, each, format);
  if (needs.plants === undefined) {
    return say`at today’s price of ${price} no number of plants is enough, as each costs ${spoken(needs.variable, each, format)} by itself.`;
  }
  if (needs.plants.isZero()) return say`at today’s price of ${price} any number of plants is enough.`;
  const now = plants.plants.gte(needs.plants) ? wording`are enough` : wording`would be enough`;
  return say`at today’s price of ${price}, ${plantsText(plants, needs.plants, format)} ${plainly(now)}.`;
}

function priceNeeded({ needs, plants }: ForPlants): ForPlants['plants'] {
  return breakevenPrice(needs, plants);
}

function breakevenPhrase(plants: ForPlants, format: Format): Phrase {
  const price = priceNeeded(plants);
  if (!price.isFinite()) return plainly(onePlanTexts.noPrice);
  const at = say`At ${plantsText(plants, plants.plants, format)} a year`;
  if (price.lte(0)) return say`${at} other returns pay all costs; ${enoughPhrase(plants, format)}`;
  return say`${at} the price must be at least ${spoken(price, plants.each, format)}; ${enoughPhrase(plants, format)}`;
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
