import type { Searched } from '../../../present/breakeven/searched';
import { createEffect, createMemo, createSignal, type Accessor } from 'solid-js';
import { numberToText } from '../../../core/number';
import type { Sheet } from '../../../model/sheet';
import type { SearchRange } from '../../../study/searchRange';
import { createBackground, workStage } from '../../kit/background/background';
import { createJob, type JobQuestion } from '../../app/jobs/createJob';
import { readBreakeven } from '../../../jobs/exactBreakeven';
import type { ResultLines, Subject } from '../../../present/results/resultLines';
import {
  fullCount,
  quickStudy,
  type LineSelection,
  type QuickStudy,
  type Targets,
} from '../../../present/breakeven/curve/quickStudy';
import type { InputInterval } from '../../../present/breakeven/curve/sample';

/** All that the study of a breakeven question depends on. */
export interface StudyOf {
  readonly sheet: Sheet;
  readonly subject: Subject;
  readonly lines: ResultLines;
  readonly range: SearchRange;
  readonly targets: Targets;
  readonly selection: LineSelection;
  /** The part of the range that someone asked to see; undefined: the usual part. */
  readonly visible: InputInterval | undefined;
}

export interface ShownStudy {
  readonly quick: Accessor<QuickStudy>;
  /** The crossings: those found in float64, replaced by the exact ones once they are known. */
  readonly found: Accessor<Searched>;
  /** Whether `found` is exact. */
  readonly exact: Accessor<boolean>;
}

/** Milliseconds for computing the lines within the frame of a keystroke. */
const budget = 4;
const fewest = 90;
/** Places computed to find out how long one takes. */
const tried = 8;

/** How many places of the lines can be computed within the frame, by timing a few of them. */
function affordable({ lines, range }: StudyOf, now: () => number): number {
  const [from, to] = [range.from.toNumber(), range.to.toNumber()];
  const start = now();
  for (let i = 0; i < tried; i += 1) {
    const x = from + ((to - from) * (i + 0.5)) / tried;
    lines.plan.float(x);
    lines.against?.float(x);
  }
  const each = Math.max(now() - start, 1e-3) / tried;
  return Math.min(fullCount, Math.max(fewest, Math.floor(budget / each)));
}

function study({ lines, range, targets, selection, visible }: StudyOf, count: number): QuickStudy {
  return quickStudy(lines, range, targets, selection, visible, count);
}

function* once<T>(make: () => T): Generator<T, void> {
  yield make();
}

function questionOf({ sheet, subject, lines, range, targets }: StudyOf): JobQuestion<'exact breakeven'> {
  return {
    sheet,
    request: {
      subject,
      input: lines.lever.cell.id,
      from: numberToText(range.from),
      to: numberToText(range.to),
      target: numberToText(targets.plan),
      differenceTarget: numberToText(targets.difference),
    },
  };
}

/** The study with the full number of places, and the question that it belongs to. */
interface Full {
  readonly of: StudyOf;
  readonly what: QuickStudy;
}

/**
 * The study of a breakeven question as it is shown. At each change it is computed at once in float64, with as many
 * places as fit into the frame. The study with the full number of places follows between frames, and the exact search
 * in the worker.
 */
export function createStudy(of: Accessor<StudyOf>): ShownStudy {
  const first = createMemo(() => {
    const wanted = of();
    const count = affordable(wanted, () => performance.now());
    return { of: wanted, count, what: study(wanted, count) };
  });
  const [full, setFull] = createSignal<Full>();
  const background = createBackground();
  const search = createJob('exact breakeven');
  const question = createMemo(() => questionOf(first().of));

  createEffect(() => {
    const { of: wanted, count } = first();
    const all = once(() => study(wanted, fullCount));
    background.start(count < fullCount ? [workStage(all, (what) => setFull({ of: wanted, what }))] : []);
    search.ask(question());
  });

  const quick = createMemo(() => (full()?.of === first().of ? full()?.what : undefined) ?? first().what);
  const exactly = createMemo(() => {
    const { found, of: answered } = search.state();
    const { from, to } = first().of.range;
    return found !== undefined && answered === question() ? readBreakeven(found, from, to) : undefined;
  });
  return { quick, found: () => exactly() ?? quick().found, exact: () => exactly() !== undefined };
}
