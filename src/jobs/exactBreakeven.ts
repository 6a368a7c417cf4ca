import type { Searched } from '../present/breakeven/searched';
import { decimal, numberToText, type Decimal } from '../core/number';
import { within } from '../core/steps';
import { breakevenInSteps, type BreakevenPoints } from '../study/breakeven';
import { settledAtEnds } from '../study/settled';
import { lineNames, movableResult, type LineName, type Subject } from '../present/results/resultLines';
import { searchReports, type Prepared, type Report } from './job';

/** A search; numbers as text with all their digits. */
export interface BreakevenRequest {
  readonly subject: Subject;
  /** The cell that moves. */
  readonly input: number;
  readonly from: string;
  readonly to: string;
  readonly target: string;
  /** The target of the difference. */
  readonly differenceTarget: string;
}

interface FoundText {
  readonly crossings: readonly { readonly value: string; readonly direction: 'up' | 'down' | 'touch' }[];
  readonly breaks: readonly string[];
  readonly holds: BreakevenPoints['holds'];
}

/** What a search found, by line. */
export type BreakevenFound = Partial<Record<LineName, FoundText>>;

/**
 * Searches the lines of both plans and of their difference; finds nothing where the cell is not an input of the plan.
 */
export function* exactBreakeven(
  { model, values }: Prepared,
  { subject, input, from, to, target, differenceTarget }: BreakevenRequest,
): Generator<Report<BreakevenFound>, BreakevenFound> {
  const lines = movableResult(model, values, subject)?.lines(input);
  if (lines === undefined) return {};
  const range = { from: decimal(from), to: decimal(to) };
  const targets = { plan: target, against: target, difference: differenceTarget };
  const found: BreakevenFound = {};
  for (const [i, name] of lineNames.entries()) {
    const line = lines[name];
    if (line === undefined) continue;
    const steps = breakevenInSteps(line, range, decimal(targets[name]), [lines.lever.base]);
    const points = yield* searchReports(within(i / lineNames.length, (i + 1) / lineNames.length, steps));
    found[name] = textOf(settledAtEnds(points));
  }
  return found;
}

function textOf({ crossings, breaks, holds }: BreakevenPoints): FoundText {
  return {
    crossings: crossings.map(({ value, direction }) => ({ value: numberToText(value), direction })),
    breaks: breaks.map(numberToText),
    holds,
  };
}

/** The points found, as exact numbers. */
export function readBreakeven(found: BreakevenFound, from: Decimal, to: Decimal): Searched {
  const read = ({ crossings, breaks, holds }: FoundText): BreakevenPoints => ({
    range: { from, to },
    crossings: crossings.map(({ value, direction }) => ({ value: decimal(value), direction })),
    breaks: breaks.map((value) => decimal(value)),
    holds,
  });
  return Object.fromEntries(Object.entries(found).map(([name, text]) => [name, read(text)]));
}
