import { decimal, type Decimal } from '../../../src/core/number';
import { evaluatePlan } from '../../../src/model/values';
import type { Model } from '../../../src/model/model';
import { breakeven, type BreakevenPoints } from '../../../src/study/breakeven';
import { possibleRange } from '../../../src/study/searchRange';
import { settledAtEnds } from '../../../src/study/settled';
import { lineNames, movableResult, type ResultLines } from '../../../src/present/results/resultLines';
import { fullCount, quickStudy, type QuickStudy, type Targets } from '../../../src/present/breakeven/curve/quickStudy';
import type { BreakevenContext } from '../../../src/present/breakeven/sentences';
import { linesOfView, type LineView } from '../../../src/present/breakeven/view';
import { idOf, modelOf } from '../../model/table';

/** The lines of result `r` as `x` moves, in the last plan, compared with the first where there are two. */
export function linesIn(model: Model, input = 'x'): ResultLines {
  const last = model.plans.length - 1;
  const subject = { result: idOf(model, 'r'), plan: last, against: last === 0 ? undefined : 0 };
  const lines = movableResult(
    model,
    model.plans.map((plan) => evaluatePlan(plan)),
    subject,
  )?.lines(idOf(model, input));
  if (lines === undefined) throw new Error(`${input} is no input`);
  return lines;
}

export interface Case {
  readonly view?: LineView;
  readonly target?: string;
  readonly from?: string;
  readonly to?: string;
}

/** All that a breakeven of `r` against `x` says, searched exactly. */
export function ask(
  text: string,
  { view, target = '0', from, to }: Case = {},
): { matter: BreakevenContext; quick: QuickStudy } {
  const model = modelOf(text);
  if (model.faults.length > 0) throw new Error(model.faults[0]!.message);
  const lines = linesIn(model);
  const selection = view ?? (lines.against === undefined ? 'alone' : 'both');
  const usual = possibleRange(lines.lever);
  const end = (own: string | undefined, other: Decimal): Decimal => (own === undefined ? other : decimal(own));
  const range = { from: end(from, usual.from), to: end(to, usual.to) };
  const at = decimal(target);
  const targets: Targets = { plan: at, against: at, difference: selection === 'both' ? decimal(0) : at };
  const found = Object.fromEntries(
    lineNames.flatMap((name) => {
      const line = lines[name];
      return line === undefined
        ? []
        : [[name, settledAtEnds(breakeven(line, range, targets[name], [lines.lever.base]))] as const];
    }),
  );
  const quick = quickStudy(lines, range, targets, linesOfView(selection), undefined, fullCount);
  const [first, last] = [model.plans[0]!.name, model.plans.at(-1)!.name];
  const matter: BreakevenContext = {
    subject: { result: model.cells[idOf(model, 'r')]!, target: at, plan: last, against: lines.against && first },
    moved: { cell: lines.lever.cell, today: lines.lever.base, range: lines.lever.range },
    view: selection,
    lines,
    targets,
    found,
  };
  return { matter, quick };
}

/** What was found, as `2 up, 5 down, breaks 3` or `everywhere`, to so many digits. */
export function said({ crossings, breaks, holds }: BreakevenPoints, digits = 10): string {
  const parts = [
    ...crossings.map(({ value, direction }) => `${value.toSignificantDigits(digits).toString()} ${direction}`),
    ...(breaks.length > 0
      ? [`breaks ${breaks.map((value) => value.toSignificantDigits(digits).toString()).join(' ')}`]
      : []),
    ...(holds === null ? [] : [holds]),
  ];
  return parts.join(', ');
}
