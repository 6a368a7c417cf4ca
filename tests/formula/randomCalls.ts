import fc from 'fast-check';
import { plain, same, type Dimension } from '../../src/core/dimension';
import type { Argument, FormulaFunction } from '../../src/formula/function';
import { functions } from '../../src/formula/functions';

/** Kinds of number that random formulas are made of; `time` is crop time, `count` is of plants. */
export type NumberKind = 'plain' | 'time' | 'count';

const dimensions: Readonly<Record<NumberKind, Dimension>> = {
  plain,
  time: new Map([['day', 1]]),
  count: new Map([['plant', 1]]),
};

/** What may stand as an argument: a value of a kind, whose unit may carry a factor or not, or a written number. */
type Slot = NumberKind | 'unfactored' | 'unfactoredCount' | 'written' | 'zero';

function standing(dimension: Dimension | undefined, factored: boolean, literal?: number): Argument {
  return { dimension, factored, literal };
}

const slots: Readonly<Record<Slot, Argument>> = {
  plain: standing(plain, true),
  unfactored: standing(plain, false),
  written: standing(plain, false, 1),
  zero: standing(undefined, false, 0),
  time: standing(dimensions.time, true),
  count: standing(dimensions.count, true),
  unfactoredCount: standing(dimensions.count, false),
};
const slotNames = Object.keys(slots) as Slot[];

/** One way to call a function that its unit rule lets pass. */
interface Form {
  readonly slots: readonly Slot[];
  readonly dimension: Dimension;
  /** Its arguments keep their scale, so that it gives nothing larger than they are. */
  readonly keeps: boolean;
}

function choices(length: number): Slot[][] {
  return length === 0 ? [[]] : choices(length - 1).flatMap((rest) => slotNames.map((slot) => [...rest, slot]));
}

/** Every way to call a function, up to three arguments where it asks for fewer: its record alone says which. */
function formsOf(fn: FormulaFunction): Form[] {
  const [least, most] = fn.arity;
  const counts = Array.from({ length: Math.min(most, Math.max(least, 3)) - least + 1 }, (_, i) => least + i);
  return counts.flatMap(choices).flatMap((chosen) => {
    const typed = fn.typing(
      chosen.map((slot) => slots[slot]),
      fn.name,
    );
    if (typeof typed === 'string' || typed.dimension === undefined) return [];
    return [{ slots: chosen, dimension: typed.dimension, keeps: typed.scale === 'common' }];
  });
}

const forms = [...functions.values()].map((fn) => ({ name: fn.name, forms: formsOf(fn) }));

/** The functions that can be called on plain numbers, times and counts so that they give one of these. */
export const callable: readonly string[] = forms
  .filter((fn) => fn.forms.some(({ dimension }) => Object.values(dimensions).some((kind) => same(kind, dimension))))
  .map(({ name }) => name);

type Fillings = Readonly<Record<Slot, fc.Arbitrary<string>>>;

/**
 * Calls of every function in every way that gives a kind.
 * @param any what fills a slot of a function that gives nothing larger than its arguments
 * @param small what fills a slot of any other, so that it cannot overflow
 */
export function callsGiving(kind: NumberKind, any: Fillings, small: Fillings): fc.Arbitrary<string>[] {
  return forms.flatMap(({ name, forms: all }) => {
    const fitting = all.filter(({ dimension }) => same(dimension, dimensions[kind]));
    if (fitting.length === 0) return [];
    const filled = ({ slots: chosen, keeps }: Form): fc.Arbitrary<string> =>
      fc.tuple(...chosen.map((slot) => (keeps ? any : small)[slot])).map((texts) => `${name}(${texts.join(', ')})`);
    return [fc.constantFrom(...fitting).chain(filled)];
  });
}
