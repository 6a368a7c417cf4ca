import { wording } from '../../../language/wording';
import { decimal, type Decimal } from '../../../core/number';
import type { Cell } from '../../../model/cell';
import { reach } from '../../../model/graph';
import { readsOf } from '../../../model/links/reads';
import type { Model, Plan } from '../../../model/model';
import { listed, plainly, say, sentences, type Phrase } from '../../text/phrase';
import { spoken } from '../../text/spokenNumber';
import type { Format } from '../../text/numberFormat';
import { marked } from '../caseOf';
import { aYear, gainUnit, type AskedOf, type OutlayEntry } from './terms';

/** A cost line that may charge for the outlay a second time. */
interface DoubledLine {
  readonly cell: Cell;
  /** The entries of the outlay that it is worked out from; none where it only repays something over years. */
  readonly from: readonly Cell[];
}

/** What may be counted twice, and what the yearly gain is without it. */
export interface Doubled {
  readonly lines: readonly DoubledLine[];
  /** In money a year. */
  readonly gain: Decimal;
}

/** Everything that a cell is worked out from in a plan, itself included. */
function behind(plan: Plan | undefined, id: number): ReadonlySet<number> {
  return plan === undefined ? new Set() : reach([id], plan.contents.map(readsOf));
}

/** Whether a plan repays a price over years in any of some cells. */
function repays(plan: Plan | undefined, ids: ReadonlySet<number>): boolean {
  return [...ids].some((id) => /\bcapital_recovery\s*\(/.test(plan?.contents[id]?.text ?? ''));
}

/** How much the change adds to a cost line, in money a year. */
function changeOf({ values, made, plans: [from, to] }: AskedOf, { id }: Cell): Decimal {
  const [before, after] = [from, to].map((plan) => values[plan]?.numbers[id] ?? decimal(NaN));
  return aYear(after!.minus(before!), made);
}

function doubledLine({ model, plans }: AskedOf, cell: Cell, outlay: readonly OutlayEntry[]): DoubledLine | undefined {
  const sides = plans.map((plan) => ({ plan: model.plans[plan], ids: behind(model.plans[plan], cell.id) }));
  const from = outlay.filter((entry) => sides.some(({ ids }) => ids.has(entry.cell.id))).map((entry) => entry.cell);
  // A typed outlay cannot be traced: then a price that a line repays over years is likely to be the same money.
  const isLikely = outlay.length === 0 && sides.some(({ plan, ids }) => repays(plan, ids));
  return from.length > 0 || isLikely ? { cell, from } : undefined;
}

/**
 * The cost lines that change between the plans and charge, each year, for what the outlay pays for once. Undefined
 * where there are none.
 * @param outlay the entries named as outlay; none where it was typed
 */
export function doubled(of: AskedOf, outlay: readonly OutlayEntry[]): Doubled | undefined {
  const lines = marked(of.model)
    .filter(({ budget }) => budget === 'cost')
    .flatMap((cell) => {
      const change = changeOf(of, cell);
      const line = change.isZero() || change.isNaN() ? undefined : doubledLine(of, cell, outlay);
      return line === undefined ? [] : [{ ...line, change }];
    });
  if (lines.length === 0) return undefined;
  const gain = lines.reduce((total, { change }) => total.plus(change), aYear(of.made.netChange, of.made));
  return { lines, gain };
}

function lineText({ cell, from }: DoubledLine, nameOf: (cell: Cell) => string): Phrase {
  return from.length === 0
    ? say`${nameOf(cell)} repays a price over the years, perhaps that of this outlay.`
    : say`${nameOf(cell)} is worked out from ${listed(from.map(nameOf))}, which the outlay already pays.`;
}

/** A caution that the outlay may stand in the yearly gain too, and the gain without that. */
export function doubledSentence(
  { lines, gain }: Doubled,
  made: AskedOf['made'],
  nameOf: (cell: Cell) => string,
  format: Format,
): Phrase {
  const without = spoken(gain, gainUnit(made), format);
  return sentences(
    plainly(wording`May count twice:`),
    ...lines.map((line) => lineText(line, nameOf)),
    lines.length === 1
      ? say`Without that line the yearly gain is ${without}.`
      : say`Without these lines the yearly gain is ${without}.`,
  );
}

/** Whether the outlay hangs on an entry with a range in any of some plans, so that draws would move it as well. */
export function isUnsure(model: Model, plans: readonly number[], outlay: readonly OutlayEntry[]): boolean {
  return outlay.some(({ cell }) =>
    plans.some((plan) => [...behind(model.plans[plan], cell.id)].some((id) => model.cells[id]?.range !== undefined)),
  );
}
