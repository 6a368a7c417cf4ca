import { decimal, numberToText, type Decimal } from '../../core/number';
import { buildModel } from '../../model/buildModel';
import type { Cell } from '../../model/cell';
import { question } from '../../model/response';
import type { Sheet } from '../../model/sheet';
import { evaluatePlan } from '../../model/values';
import { switchingValues, type SwitchingValue } from '../../study/switching';
import type { Subject } from '../breakeven/lines';

/** A search as it is sent to where it runs. */
export interface SwitchAsk {
  readonly sheet: Sheet;
  readonly subject: Subject;
  readonly target: string;
}

/** Where one input flips the answer; numbers as text with all their digits. */
export interface SwitchText {
  readonly cell: number;
  readonly base: string;
  readonly all: readonly string[];
  readonly value: string | undefined;
  readonly isBehind: boolean;
  readonly change: string | undefined;
}

/** Where every input flips the answer, in order. */
export type SwitchReply = readonly SwitchText[];

/** Where one input flips the answer. */
export interface Switch {
  readonly cell: Cell;
  readonly base: Decimal;
  /** Undefined where nothing in the range looked at flips it. */
  readonly value: Decimal | undefined;
  /** Whether it flips not at that value but right behind it, as seen from today. */
  readonly isBehind: boolean;
  /** In per cent of today's number; undefined where that is 0. */
  readonly change: Decimal | undefined;
  /** How many values flip it. */
  readonly count: number;
}

function written({ lever, value, isBehind, all, changePercent }: SwitchingValue): SwitchText {
  return {
    cell: lever.cell.id,
    base: numberToText(lever.base),
    all: all.map(numberToText),
    value: value && numberToText(value),
    isBehind,
    change: changePercent && numberToText(changePercent),
  };
}

/** Searches all inputs of the plan. */
export function searchSwitches({ sheet, subject, target }: SwitchAsk): SwitchReply {
  const model = buildModel(sheet);
  const plan = model.plans[subject.plan];
  const against = subject.against === undefined ? undefined : model.plans[subject.against];
  if (plan === undefined) return [];
  const view = { model, result: subject.result, plan, against };
  const asked = question(view, evaluatePlan(plan), against && evaluatePlan(against));
  return switchingValues(asked, decimal(target)).map(written);
}

/** A reply's numbers brought back, in its order. */
export function readSwitches(found: SwitchReply, cells: readonly Cell[]): Switch[] {
  return found.flatMap(({ cell: id, base, value, isBehind, change, all }) => {
    const cell = cells[id];
    if (cell === undefined) return [];
    const read = (text: string | undefined): Decimal | undefined => (text === undefined ? undefined : decimal(text));
    return [{ cell, base: decimal(base), value: read(value), isBehind, change: read(change), count: all.length }];
  });
}
