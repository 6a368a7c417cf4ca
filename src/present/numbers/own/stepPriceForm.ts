import { wording } from '../../../language/wording';
import { decimal, type Decimal } from '../../../core/number';
import type { Cell } from '../../../model/cell';
import { readStepFormula, type StepLabels } from '../../../model/change/stepPrice';
import { cellNamed, type Model } from '../../../model/model';
import { field } from '../../../model/sheet';
import type { Values } from '../../../model/values';
import type { Format } from '../../text/numberFormat';
import { plainly, say, sentences, type Phrase } from '../../text/phrase';
import { spoken } from '../../text/spokenNumber';
import { typedCount, typedNumber, writtenToEdit } from '../../text/typedNumber';

/** Words of the form for a price by quantity. */
export const stepPriceTexts = {
  priceOf: wording`Which price`,
  newPrice: wording`a new price`,
  label: wording`What is it the price of?`,
  quantity: wording`Counted by what is bought`,
  first: (unit: string) => [wording`Price to begin with`, unit].filter(Boolean).join(', '),
  from: (step: number, unit: string) => [wording`Step ${step}: from`, unit].filter(Boolean).join(', '),
  price: (unit: string) => [wording`price from there`, unit].filter(Boolean).join(', '),
  more: wording`Add a step`,
  remove: wording`Take it away`,
  removeStep: (step: number) => wording`Take step ${step} away`,
  steps: wording`Prices by quantity`,
  means: wording`The price of the step that is reached counts for all that is bought, not only for what lies above the step.`,
  noQuantity: wording`This model has no entry for how much is bought, such as plugs a year: add one first, or a formula that gives it.`,
  noMoney: wording`This model has no unit of money yet: add an entry in a currency first.`,
  noLabel: wording`Say in a word or two what it is the price of.`,
} as const;

/** The labels of the entries that a price by quantity is made from. */
export function stepLabels(label: string): StepLabels {
  return {
    first: wording`${label}, to begin with`,
    from: (step) => wording`${label}, step ${step}: from`,
    price: (step) => wording`${label}, step ${step}: price`,
    rise: wording`The steps of ${label} do not rise: set each above the one before.`,
  };
}

/** Numbers of a form as they are typed. */
export interface TypedSteps {
  readonly first: string;
  readonly steps: readonly { readonly from: string; readonly price: string }[];
}

/** What a form begins with: the steps that a price has, its number, or nothing. */
export function stepsOf(model: Model, price: Cell | undefined, format: Format): TypedSteps & { quantity: string } {
  const blank = { first: '', steps: [{ from: '', price: '' }], quantity: '' };
  const row = model.sheet.rows.find((one) => one.row === price?.row);
  if (row === undefined) return blank;
  const textOf = (name: string): string => {
    const entry = model.sheet.rows.find((one) => field(one, 'name') === name);
    return entry === undefined ? '' : field(entry, 'formula');
  };
  const priceOf = (name: string): string => writtenToEdit(textOf(name), format);
  const known = readStepFormula(field(row, 'formula'));
  if (known !== undefined) {
    const steps = known.steps.map(({ from, price: each }) => ({
      from: format.written(textOf(from)),
      price: priceOf(each),
    }));
    return { first: priceOf(known.first), steps, quantity: known.quantity };
  }
  const read = model.plans[0]?.contents[price?.id ?? -1];
  return read?.kind === 'input' ? { ...blank, first: writtenToEdit(read.text, format) } : blank;
}

/** What is wrong with the numbers of a form, by its fields; undefined for nothing. */
export interface StepFaults {
  readonly faulty: true;
  readonly first?: string;
  readonly steps: readonly { readonly from?: string; readonly price?: string }[];
}

function riseFault(from: Decimal, before: Decimal | undefined, format: Format): string | undefined {
  if (before === undefined) {
    return from.gt(0)
      ? undefined
      : wording`not above 0: ${format.full(from)}. Enter the quantity from which the step counts.`;
  }
  if (from.gt(before)) return undefined;
  return wording`not rising: ${format.full(from)} after ${format.full(before)}. Enter each step above the one before.`;
}

/** The numbers of a form as files write them, or what is wrong with them. */
export function readSteps(
  typed: TypedSteps,
  format: Format,
): { first: string; steps: TypedSteps['steps'] } | StepFaults {
  const first = typedNumber(typed.first, format);
  let before: Decimal | undefined;
  const steps = typed.steps.map((step) => {
    // Quantities are bought in whole numbers.
    const [from, price] = [typedCount(step.from, format), typedNumber(step.price, format)];
    const fault = 'code' in from ? from.message : riseFault(decimal(from.text), before, format);
    if (!('code' in from)) before = decimal(from.text);
    const read = { from: 'text' in from ? from.text : '', price: 'text' in price ? price.text : '' };
    return {
      read,
      faults: { ...(fault !== undefined && { from: fault }), ...('code' in price && { price: price.message }) },
    };
  });
  const isSound = 'text' in first && steps.every(({ faults }) => Object.keys(faults).length === 0);
  if (isSound) return { first: first.text, steps: steps.map(({ read }) => read) };
  return { faulty: true, ...('code' in first && { first: first.message }), steps: steps.map(({ faults }) => faults) };
}

interface PriceMade {
  readonly model: Model;
  readonly values: readonly Values[];
  readonly price: Cell;
  /** How many prices there are. */
  readonly count: number;
  readonly isNew: boolean;
}

/** What was made, and which price is in force today. */
export function stepPriceSaid({ model, values, price, count, isNew }: PriceMade, format: Format): Phrase {
  const known = readStepFormula(
    field(model.sheet.rows.find(({ row }) => row === price.row) ?? { row: 0, fields: new Map() }, 'formula'),
  );
  const quantity = known && cellNamed(model, known.quantity);
  const each = model.plans.flatMap(({ name }, p) => {
    const [number, bought] = [values[p]?.numbers[price.id], quantity && values[p]?.numbers[quantity.id]];
    if (number?.isFinite() !== true || bought?.isFinite() !== true) return [];
    return [
      { name, text: wording`${spoken(number, price.unit, format)} at ${spoken(bought, quantity?.unit, format)}` },
    ];
  });
  const isOne = new Set(each.map(({ text }) => text)).size === 1;
  const today = isOne
    ? say`Today it is ${each[0]?.text ?? ''}.`
    : each.length === 0
      ? []
      : say`Today it is ${each.map(({ name, text }) => wording`${text} in ${name}`).join('; ')}.`;
  const waits = isNew ? plainly(wording`Nothing is made from it yet: name it in a formula.`) : [];
  return sentences(say`${price.label} goes by quantity now, with ${String(count)} prices.`, today, waits);
}
