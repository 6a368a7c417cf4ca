import type { Switch } from '../present/whatMatters/switching/switchingInput';
import { decimal, numberToText, type Decimal } from '../core/number';
import { buildModel } from '../model/buildModel';
import type { Cell } from '../model/cell';
import { question } from '../model/response';
import type { Sheet } from '../model/sheet';
import { evaluatePlan } from '../model/values';
import { switchingValues, type SwitchingValue } from '../study/switching';
import type { Subject } from '../present/results/resultLines';

/** A search as it is sent to where it runs. */
export interface SwitchRequest {
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
export function searchSwitches({ sheet, subject, target }: SwitchRequest): SwitchReply {
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
