import type { Searched } from '../present/breakeven/searched';
import { decimal, numberToText, type Decimal } from '../core/number';
import { buildModel } from '../model/buildModel';
import type { Model } from '../model/model';
import { withRow, type Sheet, type SheetRow } from '../model/sheet';
import { evaluatePlan, type Values } from '../model/values';
import { breakeven, type BreakevenPoints } from '../study/breakeven';
import {
  lineNames,
  movableResult,
  type ResultLine,
  type LineName,
  type ResultLines,
  type Subject,
} from '../present/results/resultLines';

/** A search as it is sent to where it runs; numbers as text with all their digits. */
export interface SearchRequest {
  readonly id: number;
  /** The model as text: whole, or the rows that changed since the last request. */
  readonly sheet: { readonly whole: Sheet } | { readonly rows: readonly SheetRow[] };
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
export interface SearchReply {
  readonly id: number;
  readonly found: Partial<Record<LineName, FoundText>>;
}

/** Exact searches, one after the other; it keeps the model from one to the next. */
export class ExactSearch {
  private sheet: Sheet = { columns: [], rows: [] };
  private model: Model | undefined;
  private values: readonly Values[] = [];

  answer(request: SearchRequest): SearchReply {
    this.take(request.sheet);
    const model = this.model ?? buildModel(this.sheet);
    const lines = movableResult(model, this.values, request.subject)?.lines(request.input);
    return { id: request.id, found: lines === undefined ? {} : foundIn(lines, request) };
  }

  private take(sheet: SearchRequest['sheet']): void {
    const next = 'whole' in sheet ? sheet.whole : sheet.rows.reduce(withRow, this.sheet);
    if (this.model !== undefined && next === this.sheet) return;
    this.sheet = next;
    this.model = buildModel(next);
    this.values = this.model.plans.map((plan) => evaluatePlan(plan));
  }
}

function foundIn(lines: ResultLines, { from, to, target, differenceTarget }: SearchRequest): SearchReply['found'] {
  const range = { from: decimal(from), to: decimal(to) };
  const search = (line: ResultLine, at: string): FoundText =>
    textOf(breakeven(line, range, decimal(at), [lines.lever.base]));
  const targets = { plan: target, against: target, difference: differenceTarget };
  const found = lineNames.flatMap((name) => {
    const line = lines[name];
    return line === undefined ? [] : [[name, search(line, targets[name])] as const];
  });
  return Object.fromEntries(found);
}

function textOf({ crossings, breaks, holds }: BreakevenPoints): FoundText {
  return {
    crossings: crossings.map(({ value, direction }) => ({ value: numberToText(value), direction })),
    breaks: breaks.map(numberToText),
    holds,
  };
}

/** A reply's numbers brought back. */
export function readReply({ found }: SearchReply, from: Decimal, to: Decimal): Searched {
  const read = ({ crossings, breaks, holds }: FoundText): BreakevenPoints => ({
    range: { from, to },
    crossings: crossings.map(({ value, direction }) => ({ value: decimal(value), direction })),
    breaks: breaks.map((value) => decimal(value)),
    holds,
  });
  return Object.fromEntries(Object.entries(found).map(([name, text]) => [name, read(text)]));
}
