import type { ShownValue } from '../../../present/numbers/shownValue';
import { createSignal, type Accessor, type Setter } from 'solid-js';
import { decimal } from '../../../core/number';
import type { Content } from '../../../model/content';
import type { CellError } from '../../../model/values';
import type { Snapshot } from './snapshot';

const nothing: ShownValue = { number: decimal(NaN), error: undefined, content: undefined };

export const unknownNumber = nothing.number;

function sameError(a: CellError | undefined, b: CellError | undefined): boolean {
  return a === b || (a?.message === b?.message && a?.cause === b?.cause);
}

function sameContent(a: Content | undefined, b: Content | undefined): boolean {
  if (a === b) return true;
  if (a?.kind !== b?.kind || a?.own !== b?.own || a?.text !== b?.text) return false;
  return a?.kind !== 'void' || b?.kind !== 'void' || a.fault.message === b.fault.message;
}

function sameShown(a: ShownValue, b: ShownValue): boolean {
  const sameNumber = a.number.eq(b.number) || (a.number.isNaN() && b.number.isNaN());
  return sameNumber && sameError(a.error, b.error) && sameContent(a.content, b.content);
}

function shownIn({ model, values }: Snapshot, plan: number, cell: number): ShownValue {
  const number = values[plan]?.numbers[cell];
  if (number === undefined) return nothing;
  return { number, error: values[plan]?.errors.get(cell), content: model.plans[plan]?.contents[cell] };
}

interface CellSignal {
  readonly read: Accessor<ShownValue>;
  readonly write: Setter<ShownValue>;
}

function cellSignal(first: ShownValue): CellSignal {
  const [read, write] = createSignal(first, { equals: sameShown });
  return { read, write };
}

/** One signal for each plan and cell. They are made anew when cells or plans are added or removed. */
export class CellSignals {
  private readonly signals: CellSignal[][];

  constructor(snapshot: Snapshot) {
    this.signals = snapshot.model.plans.map((_plan, p) =>
      snapshot.model.cells.map((cell) => cellSignal(shownIn(snapshot, p, cell.id))),
    );
  }

  fits({ model, values }: Snapshot): boolean {
    return this.signals.length === values.length && this.signals[0]?.length === model.cells.length;
  }

  /** Updates the signal of every cell that shows something else than before. */
  show(now: Snapshot, before: Snapshot): void {
    now.model.plans.forEach((plan, p) => {
      const [values, old] = [now.values[p], before.values[p]];
      const contents = before.model.plans[p]?.contents;
      if (plan.contents === contents && values === old) return;
      plan.contents.forEach((content, cell) => {
        const unmoved =
          content === contents?.[cell] &&
          values?.numbers[cell] === old?.numbers[cell] &&
          values?.errors.get(cell) === old?.errors.get(cell);
        if (!unmoved) this.signals[p]?.[cell]?.write(shownIn(now, p, cell));
      });
    });
  }

  read(plan: number, cell: number): ShownValue {
    return this.signals[plan]?.[cell]?.read() ?? nothing;
  }
}
