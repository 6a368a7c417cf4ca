import { wording } from '../../language/wording';
import type { Dimension } from '../../core/dimension';
import { isCurrency } from '../../core/unit';
import { isQuantity, type Cell } from '../../model/cell';
import type { Model, Plan } from '../../model/model';
import { inputsOf } from '../results/entryGroups';

/** A common question that one press of a button asks: how far an input may go. */
export interface UsualQuestion {
  readonly text: string;
  readonly input: Cell;
}

/** A kind of question, and how to recognise the input that it is about. */
interface Kind {
  readonly text: string;
  fits(dimension: Dimension): boolean;
  /** Words in an input's label or name, in any of the languages, each with a weight for or against the input. */
  readonly words: readonly (readonly [word: RegExp, weight: number])[];
  /** An input with a smaller sum of weights is not asked about. */
  readonly least: number;
}

/** The powers of a dimension that matter for recognising an input. */
interface Powers {
  readonly money: number;
  readonly clock: number;
  readonly counts: ReadonlyMap<string, number>;
  /** Whether the dimension holds any other kind of quantity. */
  readonly other: boolean;
}

function powers(dimension: Dimension): Powers {
  const counts = new Map<string, number>();
  let [money, clock, other] = [0, 0, false];
  for (const [kind, power] of dimension) {
    if (isCurrency(kind)) money += power;
    else if (kind === 's') clock = power;
    else if (measures.has(kind)) other = true;
    else counts.set(kind, power);
  }
  return { money, clock, counts, other };
}

/** Base kinds of quantity that are neither money, clock time nor a count. */
const measures: ReadonlySet<string> = new Set(['day', 'year', 'm', 'kg', 'W', 'K']);

function perOne(dimension: Dimension, of: 'money' | 'clock', noun: RegExp): boolean {
  const { money, clock, counts, other } = powers(dimension);
  const [only, ...more] = [...counts];
  const rest = of === 'money' ? clock : money;
  const one = of === 'money' ? money : clock;
  return !other && rest === 0 && one === 1 && more.length === 0 && only?.[1] === -1 && noun.test(only[0]);
}

const plantNoun = /^(?:plant|head|lettuce|crop|piece|bunch)$/;

const kinds: readonly Kind[] = [
  {
    text: wording`How slow may transplanting be?`,
    fits: (dimension) => perOne(dimension, 'clock', /^(?:plant|head|seedling|plug)$/),
    words: [
      [/transplant|trasplant/, 4],
      [/\bmov(?:e|ing|er)\b/, 2],
    ],
    least: 2,
  },
  {
    text: wording`How dear may an hour be?`,
    fits: (dimension) => {
      const { money, clock, counts, other } = powers(dimension);
      return money === 1 && clock === -1 && counts.size === 0 && !other;
    },
    words: [
      [/\bwages?\b|\bsalarios?\b|\bjornal(?:es)?\b/, 4],
      [/\bpay\b|\bhour(?:ly)?\b|\bpaga\b|\bhoras?\b/, 1],
      [/\bidle\b|\bovertime\b|\bocios[ao]s?\b|\bhoras? extras?\b/, -4],
    ],
    least: 1,
  },
  {
    text: wording`How low may the price fall?`,
    fits: (dimension) => perOne(dimension, 'money', plantNoun),
    words: [
      [/\bprice\b|\bprecio\b/, 4],
      [/\bsell(?:ing)?\b|\bsales?\b|\bmarket\b|\bventas?\b|\bvender\b|\bmercado\b/, 2],
      [/\blower\b|\bbeyond\b|\bsecond\b|\bmás bajo\b|\bsegund[ao]\b/, -1],
      [/\bpack(?:ing)?\b|\bseed\b|\bplug\b|\bcosts?\b|\benvas\w+|\bsemillas?\b|\bcubos?\b|\bcost[eo]s?\b/, -4],
    ],
    least: 3,
  },
  {
    text: wording`What may a plug cost?`,
    fits: (dimension) => perOne(dimension, 'money', /^(?:plug|seedling|holder)$/),
    words: [
      [/\bprice\b|\bcosts?\b|\bprecio\b|\bcost[eo]s?\b/, 2],
      [/\bseed\b|\bwash(?:ing)?\b|\bdisposal\b|\bwick\b|\bsemillas?\b|\blava\w+|\bdesech\w+|\bmecha\b/, -4],
    ],
    least: 2,
  },
];

function weight({ words }: Kind, { label, name, group }: Cell): number {
  const own = `${label} ${name.replaceAll('_', ' ')}`.toLowerCase();
  const all = `${own} ${group.toLowerCase()}`;
  // A word with a negative weight counts only in the entry's own label or name; its heading may hold many kinds of
  // entries.
  return words.reduce((sum, [word, value]) => sum + (word.test(value > 0 ? all : own) ? value : 0), 0);
}

/**
 * The usual questions for which a plan of a model has an input.
 * @param bearing how much an input matters for the result; of the inputs that fit, the first with the highest is taken
 */
export function usualQuestions(model: Model, plan: Plan, bearing: (input: Cell) => number): UsualQuestion[] {
  // The questions ask how far a number may go, which named choices do not.
  const inputs = inputsOf(model, plan).filter(isQuantity);
  return kinds.flatMap((kind) => {
    const fitting = inputs
      .filter(({ unit }) => unit !== undefined && kind.fits(unit.dimension))
      .map((input) => ({ input, weight: weight(kind, input) }))
      .filter((one) => one.weight >= kind.least)
      .map((one) => ({ ...one, bearing: bearing(one.input) }))
      .sort((a, b) => b.bearing - a.bearing || b.weight - a.weight);
    return fitting.slice(0, 1).map(({ input }) => ({ text: kind.text, input }));
  });
}
