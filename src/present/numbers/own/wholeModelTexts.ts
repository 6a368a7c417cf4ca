import { wording, wordingOf } from '../../../language/wording';
import type { System } from '../../../model/change/measures';
import { plainly, say, sentences, type Phrase } from '../../text/phrase';
import type { Option } from '../../text/option';
import { currencyCodes } from '../../../core/unit';

/** Words on changing the currency or the measures of a whole model. */
export const wholeModelTexts = {
  from: wording`Instead of`,
  to: wording`Write`,
  figures: wording`The figures`,
  keep: wording`stay as they are`,
  multiply: wording`are multiplied`,
  rate: (from: string, to: string) => wording`One ${from} is how many ${to}?`,
  change: (from: string, to: string) => wording`Write ${to} for ${from}`,
  noMoney: wording`No entry of this model is in money.`,
  rateAbove: wording`The rate must be above 0.`,
  toUs: wording`Write lengths, areas, volumes and weights in US units`,
  toMetric: wording`Write lengths, areas, volumes and weights in metric units`,
  exact: wording`By exact factors: 1 in is 2.54 cm, 1 lb is 0.45359237 kg. No result changes but for its unit.`,
  noMeasures: wording`Nothing in this model is a length, an area, a volume or a weight.`,
} as const;

let named: Intl.DisplayNames | undefined;

/** `EUR, Euro`. */
function currencyText(code: string): string {
  named ??= new Intl.DisplayNames([wordingOf('the BCP 47 tag of the language')`en`], { type: 'currency' });
  const name = named.of(code);
  return name === undefined || name === code ? code : `${code}, ${name}`;
}

/** Every currency but one, by code. */
export function currencyOptions(but: string): Option<string>[] {
  return currencyCodes.filter((code) => code !== but).map((value) => ({ value, label: currencyText(value) }));
}

/**
 * What was done to the currency.
 * @param rate the number as it is shown; undefined where the figures stay
 */
export function currencySaid(from: string, to: string, count: number, rate: string | undefined): Phrase {
  const figures =
    rate === undefined
      ? plainly(wording`Their figures stay as they were.`)
      : say`Their figures are multiplied by ${rate}.`;
  const entries =
    count === 1
      ? say`${to} stands for ${from} in one entry now.`
      : say`${to} stands for ${from} in ${plainly(String(count))} entries now.`;
  return sentences(entries, figures);
}

/** What was done to the measures. */
export function measuresSaid(to: System, count: number): Phrase {
  const system = to === 'us' ? wording`US units` : wording`metric units`;
  return count === 1
    ? say`Now one entry is in ${system}, by exact factors.`
    : say`Now ${plainly(String(count))} entries are in ${system}, by exact factors.`;
}
