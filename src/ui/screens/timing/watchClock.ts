import { createMemo, createSignal, onCleanup, type Accessor } from 'solid-js';
import { elapsed, type ClockReading, type Elapsed } from '../../../present/timing/watch';

/** Both clocks at the starts that this page has seen, by the wall clock's time. */
const starts = new Map<number, ClockReading>();
/** Starts that are kept: the running one, and the one before it, which can be taken back. */
const mostStarts = 2;

function reading(): ClockReading {
  return { wall: Date.now(), page: performance.now() };
}

/** Notes a start now; gives it in milliseconds since 1970. */
export function beginWatch(): number {
  const now = reading();
  starts.set(now.wall, now);
  for (const old of [...starts.keys()].slice(0, -mostStarts)) starts.delete(old);
  return now.wall;
}

/** The time since a start, and whether to doubt it. */
export function timeSince(since: number): Elapsed {
  return elapsed(since, reading(), starts.get(since));
}

/** Milliseconds between two readings of the clock while the watch runs. */
const beat = 100;

/** The time since a start, read anew many times a second. */
export function createTicking(since: Accessor<number>): Accessor<Elapsed> {
  const [beats, setBeats] = createSignal(0);
  const timer = setInterval(() => setBeats(beats() + 1), beat);
  onCleanup(() => clearInterval(timer));
  const time = createMemo(() => {
    beats();
    return timeSince(since());
  });
  return time;
}
