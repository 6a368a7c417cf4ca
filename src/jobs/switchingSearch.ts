import type { Switch } from '../present/whatMatters/switching/switchingInput';
import { decimal, numberToText, type Decimal } from '../core/number';
import type { Cell } from '../model/cell';
import { question } from '../model/response';
import { searchReports, type Prepared, type Report } from './job';
import { possibleRange } from '../study/searchRange';
import { switchingValuesInSteps, type SwitchingValue, type SwitchPlace } from '../study/switching';
import type { Subject } from '../present/results/resultLines';

/** A search for where every input flips the answer; the target is text with all its digits. */
export interface SwitchingRequest {
  readonly subject: Subject;
  readonly target: string;
}

/** Where one input flips the answer; numbers as text with all their digits. */
interface SwitchText {
  readonly cell: number;
  readonly base: string;
  readonly all: readonly string[];
  readonly value: string | undefined;
  readonly kind: SwitchPlace['kind'];
  readonly change: string | undefined;
}

/** Where every input flips the answer, in order. */
export type SwitchingFound = readonly SwitchText[];

function written({ lever, place, all, changePercent }: SwitchingValue): SwitchText {
  return {
    cell: lever.cell.id,
    base: numberToText(lever.base),
    all: all.map(numberToText),
    value: place && numberToText(place.at),
    kind: place?.kind ?? 'level',
    change: changePercent && numberToText(changePercent),
  };
}

/** Searches all inputs of the plan. */
export function* switchingSearch(
  { model, values }: Prepared,
  { subject, target }: SwitchingRequest,
): Generator<Report<SwitchingFound>, SwitchingFound> {
  const plan = model.plans[subject.plan];
  const planValues = values[subject.plan];
  if (plan === undefined || planValues === undefined) return [];
  const against = subject.against === undefined ? undefined : model.plans[subject.against];
  const view = { model, result: subject.result, plan, against };
  const asked = question(view, planValues, subject.against === undefined ? undefined : values[subject.against]);
  const steps = switchingValuesInSteps(asked, decimal(target), { rangeOf: possibleRange, triesChoices: true });
  return (yield* searchReports(steps)).map(written);
}

/** The switching values found, as exact numbers, in the same order. */
export function readSwitches(found: SwitchingFound, cells: readonly Cell[]): Switch[] {
  return found.flatMap(({ cell: id, base, value, kind, change, all }) => {
    const cell = cells[id];
    if (cell === undefined) return [];
    const read = (text: string | undefined): Decimal | undefined => (text === undefined ? undefined : decimal(text));
    return [{ cell, base: decimal(base), value: read(value), kind, change: read(change), count: all.length }];
  });
}
