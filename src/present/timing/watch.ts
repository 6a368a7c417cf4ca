import { wording } from '../../language/wording';
import { decimal, type Decimal } from '../../core/number';

/**
 * The state of the watch, kept as a setting so that it runs on while another screen is shown or the page is reloaded.
 */
export type WatchState =
  | { readonly state: 'ready' }
  /** @property since milliseconds since 1970, by the clock of the device */
  | { readonly state: 'running'; readonly since: number }
  | { readonly state: 'stopped'; readonly since: number; readonly seconds: Decimal };

/** A watch that runs for this many seconds was probably forgotten. */
const forgotten = 4 * 3600;

/** Reads a state from the text of the setting: blank, `1931590862000`, or `1931590862000 148.3`. */
export function watchOf(text: string): WatchState {
  const [, since = '', seconds] = /^(\d{1,15})(?: (-?\d+\.\d))?$/.exec(text) ?? [];
  if (since === '') return { state: 'ready' };
  if (seconds === undefined) return { state: 'running', since: Number(since) };
  return { state: 'stopped', since: Number(since), seconds: decimal(seconds) };
}

/** The text of a state for the setting. */
export function watchText(watch: WatchState): string {
  if (watch.state === 'ready') return '';
  return watch.state === 'running' ? String(watch.since) : `${watch.since} ${watch.seconds.toFixed(1)}`;
}

/** Seconds between two readings of the clock, rounded to tenths. */
export function secondsBetween(since: number, now: number): Decimal {
  return decimal(Math.round((now - since) / 100)).dividedBy(10);
}

/** A reading of both clocks of a machine, in milliseconds. */
export interface ClockReading {
  /** Since 1970, by the clock that can be set. */
  readonly wall: number;
  /** Of the page's own watch, which nobody can set; some machines stop it while they sleep. */
  readonly page: number;
}

/** Clocks that differ by more than this many milliseconds no longer tell the same time. */
const together = 2000;

/** A time by both clocks. */
export interface Elapsed {
  /** Rounded to tenths. */
  readonly seconds: Decimal;
  /** Why it may be wrong; blank for no reason. */
  readonly doubt: string;
}

/**
 * The time since a start. The page's own watch is right where the other clock was set back, and behind where the
 * machine slept: the longer of the two counts, and a gap between them is said.
 * @param start both clocks at the start, where this page saw it; once it is loaded again only the wall clock tells
 */
export function elapsed(since: number, now: ClockReading, start: ClockReading | undefined): Elapsed {
  const byWall = now.wall - since;
  if (start?.wall !== since) {
    const seconds = secondsBetween(since, now.wall);
    return { seconds, doubt: doubtOf(seconds) };
  }
  const byPage = now.page - start.page;
  const gap = byWall - byPage;
  const seconds = secondsBetween(0, Math.max(byWall, byPage));
  if (gap < -together)
    return { seconds, doubt: wording`The clock of this device was set back meanwhile: the page’s own watch counts.` };
  if (gap > together)
    return { seconds, doubt: wording`The device slept, or its clock was set: compare with another watch.` };
  return { seconds, doubt: doubtOf(seconds) };
}

/** The watch after it is stopped; one that does not run is unchanged. */
export function stoppedAfter(watch: WatchState, seconds: Decimal): WatchState {
  return watch.state === 'running' ? { state: 'stopped', since: watch.since, seconds } : watch;
}

/** Why a time may be wrong: the clock was set back, no time passed, or it is too long for one batch. Blank for none. */
export function doubtOf(seconds: Decimal): string {
  if (seconds.lt(0)) return wording`The clock of this device was set back since the start: let this time go.`;
  if (seconds.isZero()) return wording`No time has passed: let it go and start again.`;
  return seconds.gt(forgotten) ? wording`That is more than four hours: was the watch forgotten?` : '';
}

/** A time as a clock shows it: `0:09.4`, `12:05.0`, `1:02:03.4`; `point` is the decimal mark. */
export function dialText(seconds: Decimal, point: string): string {
  const tenths = Math.max(0, Math.round(seconds.toNumber() * 10));
  const [hours, minutes, rest] = [Math.floor(tenths / 36_000), Math.floor(tenths / 600) % 60, tenths % 600];
  const two = (value: number): string => String(value).padStart(2, '0');
  const tail = `${two(Math.floor(rest / 10))}${point}${rest % 10}`;
  return hours > 0 ? `${hours}:${two(minutes)}:${tail}` : `${minutes}:${tail}`;
}

/** The local date as trials files write it. */
export function localDay(at: Date): string {
  const two = (value: number): string => String(value).padStart(2, '0');
  return `${String(at.getFullYear()).padStart(4, '0')}-${two(at.getMonth() + 1)}-${two(at.getDate())}`;
}
