import { createEffect, createMemo, createSignal, type Accessor } from 'solid-js';
import type { Question } from '../../../../model/response';
import { createBackground, runSlice, workStage } from '../../../kit/background/background';
import { pause } from '../../../app/jobs/pause';
import {
  exactBars,
  barsInOrder,
  quickBars,
  type TornadoProgress,
  type ShownBar,
} from '../../../../present/whatMatters/tornado/bars';

/** The part of a tornado computed so far. */
export interface ShownTornado {
  /** Largest swing first. */
  readonly bars: readonly ShownBar[];
  /** Share of the entries that have been computed. */
  readonly share: number;
  /** Whether its numbers are exact rather than float64. */
  readonly exact: boolean;
}

/** A tornado with the question that it answers. */
interface Answer {
  readonly of: Question | undefined;
  readonly tornado: ShownTornado;
}

const nothing: ShownTornado = { bars: [], share: 0, exact: false };

function shownOf({ found, share }: TornadoProgress, exact: boolean): ShownTornado {
  return { bars: barsInOrder(found), share, exact };
}

/** The float64 bars computed in one slice of time, and the work that remains. */
function begin(question: Question): { tornado: ShownTornado; rest: Iterator<TornadoProgress, void>; done: boolean } {
  const rest = quickBars(question);
  let tornado = nothing;
  const ended = runSlice(
    workStage(rest, (progress) => {
      tornado = shownOf(progress, false);
    }),
  );
  return { tornado, rest, done: ended || tornado.share === 1 };
}

/** Whether two questions are about the same result of the same plans; their numbers may differ. */
function asksForSame({ view: a }: Question, { view: b }: Question): boolean {
  return (
    a.model.cells[a.result] === b.model.cells[b.result] &&
    a.plan.name === b.plan.name &&
    a.against?.name === b.against?.name
  );
}

/**
 * The tornado of a question as it is shown. When the question changes, as many float64 bars as fit into one slice of
 * time are computed at once, the others right after, and the exact ones in the background. Until all float64 bars are
 * there, the last complete tornado of the same result stays, so that bars do not vanish and come back while the machine
 * is busy.
 */
export function createTornado(ask: Accessor<Question | undefined>): Accessor<ShownTornado> {
  const first = createMemo(() => {
    const of = ask();
    return { of, begun: of && begin(of) };
  });
  const [deferred, setLater] = createSignal<Answer>();
  const background = createBackground();
  createEffect(() => {
    const { of, begun } = first();
    background.stop();
    if (of === undefined || begun === undefined) return;
    const exact = workStage(exactBars(of), (progress, done) => {
      if (done) setLater({ of, tornado: shownOf(progress, true) });
    });
    if (begun.done) {
      background.start([exact]);
      return;
    }
    const toldFrom = performance.now() + pause;
    const quick = workStage(begun.rest, (progress, done) => {
      if (done || performance.now() >= toldFrom) setLater({ of, tornado: shownOf(progress, false) });
      if (done) background.start([exact]);
    });
    background.start([quick], 0);
  });
  const shown = createMemo<Answer>(
    (before) => {
      const { of, begun } = first();
      const followed = deferred();
      if (followed !== undefined && followed.of === of) return followed;
      if (of === undefined || begun === undefined) return { of, tornado: nothing };
      const stands = before.tornado.share === 1 && before.of !== undefined && asksForSame(before.of, of);
      return !begun.done && stands ? before : { of, tornado: begun.tornado };
    },
    { of: undefined, tornado: nothing },
  );
  const tornado = createMemo(() => shown().tornado);
  return tornado;
}
