import { createEffect, createMemo, createSignal, type Accessor } from 'solid-js';
import type { Question } from '../../model/response';
import { createBackground, runSlice, stageOf } from '../finding/background';
import { exactBars, inOrder, quickBars, type Progress, type ShownBar } from './bars';

/** A tornado as far as it has come. */
export interface ShownTornado {
  /** In order. */
  readonly bars: readonly ShownBar[];
  /** Share of the entries looked at. */
  readonly share: number;
  /** Whether its numbers are exact rather than float64. */
  readonly exact: boolean;
}

/** Something that was worked out later, with the question it was worked out for. */
interface Later {
  readonly of: Question | undefined;
  readonly tornado: ShownTornado;
}

const nothing: ShownTornado = { bars: [], share: 0, exact: false };

function shownOf({ found, share }: Progress, exact: boolean): ShownTornado {
  return { bars: inOrder(found), share, exact };
}

/** The float64 bars as far as one slice of work goes, and the rest of that work. */
function begin(question: Question): { tornado: ShownTornado; rest: Iterator<Progress, void>; done: boolean } {
  const rest = quickBars(question);
  let tornado = nothing;
  const done = runSlice(
    stageOf(rest, (progress) => {
      tornado = shownOf(progress, false);
    }),
  );
  return { tornado, rest, done };
}

/**
 * The tornado of a question: in float64 in the turn in which the question changes, as far as one slice goes; the rest
 * and the exact numbers follow in the background.
 */
export function createTornado(ask: Accessor<Question | undefined>): Accessor<ShownTornado> {
  const first = createMemo(() => {
    const of = ask();
    return { of, begun: of && begin(of) };
  });
  const [later, setLater] = createSignal<Later>();
  const background = createBackground();
  createEffect(() => {
    const { of, begun } = first();
    background.stop();
    if (of === undefined || begun === undefined) return;
    const quick = stageOf(begun.rest, (progress) => setLater({ of, tornado: shownOf(progress, false) }));
    const exact = stageOf(exactBars(of), (progress, done) => {
      if (done) setLater({ of, tornado: shownOf(progress, true) });
    });
    background.start(begun.done ? [exact] : [quick, exact]);
  });
  const shown = createMemo(() => {
    const { of, begun } = first();
    const followed = later();
    return followed !== undefined && followed.of === of ? followed.tornado : (begun?.tornado ?? nothing);
  });
  return shown;
}
