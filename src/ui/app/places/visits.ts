import { createSignal, type Accessor } from 'solid-js';
import { frameTexts } from '../../../present/page/frameTexts';
import type { Jump } from '../store/entryNavigation';
import { addressOf, isSamePlace, placeNamed, visitOf, type Place, type Visit } from './place';

export interface VisitOptions {
  /** The place as it is now, without a row. */
  readonly here: () => Place;
  /** Whether a model that was open at a visit is the one that is open now, also if it has another id since. */
  readonly isOpen: (model: string) => boolean;
  /** Leaves for the model of a visit; false where that is not to be had, or is the present one. */
  readonly openModel: (visit: Visit) => Promise<boolean>;
  /** Shows a place of the present model. */
  readonly show: (place: Place) => void;
}

/** The program's places in the browser's history. */
export interface Visits {
  /** Adds a place, unless it is the one where somebody is. @param jump the link that led there */
  readonly arrive: (jump: Jump | undefined) => void;
  /** Goes where the browser's history says. */
  readonly follow: () => Promise<void>;
  /** The text of the button that leads back to the last link; undefined where there is none. */
  readonly wayBack: Accessor<string | undefined>;
  readonly goBack: () => void;
  /** Offers no way back to links any more, as the model has changed. */
  readonly forget: () => void;
}

/** Where a link stood that somebody followed. */
interface Spot {
  /** Of the visit on which it stood. */
  readonly depth: number;
  readonly text: string;
  readonly jump: Jump;
}

/** At most this many links are remembered. */
const mostSpots = 30;

function spotOf(depth: number, jump: Jump): Spot {
  const entry = jump.focused?.closest('.entry')?.querySelector('.ask')?.textContent;
  const text = typeof entry === 'string' ? frameTexts.backTo(entry) : frameTexts.backWhereYouWere;
  return { depth, text, jump };
}

/** Stands again where a link was followed. */
function standAt({ jump: { scroll, focused } }: Spot): void {
  scrollTo({ top: scroll });
  if (focused instanceof HTMLElement) focused.focus({ preventScroll: true });
}

/** Gives the focus to the question that is shown, where what had it is gone. */
function focusSomething(): void {
  if (document.activeElement !== document.body && document.activeElement !== null) return;
  document.querySelector<HTMLElement>('.questions [aria-current]')?.focus({ preventScroll: true });
}

/** What the browser's history holds of the depth of a visit, whole or not. */
function depthNow(): number {
  const depth: unknown = (history.state as Partial<Visit> | null)?.depth;
  return typeof depth === 'number' ? depth : 0;
}

/**
 * Adds a visit of a model that the page is about to leave for; it shows what was last looked at there.
 * @param isGone whether the present model is deleted, so that the visit takes the place of the one to it
 */
export function leaveForModel(isGone = false): void {
  const address = location.pathname + location.search;
  if (isGone) history.replaceState({ depth: depthNow() }, '', address);
  else history.pushState({ depth: depthNow() + 1 }, '', address);
}

/** The spot that a person is offered to go back to, by the depth at which the page stands. */
function createOffer(spots: Accessor<readonly Spot[]>, depthOfNow: () => number) {
  const [offered, setOffered] = createSignal<Spot>();
  /** Links before this depth were followed before the model changed. */
  let from = 0;
  return {
    offered,
    offer: (): void => {
      setOffered(spots().findLast(({ depth }) => depth >= from && depth < depthOfNow()));
    },
    forget: (): void => {
      from = depthOfNow();
      setOffered(undefined);
    },
  };
}

/** @param first the place where the page began */
export function createVisits(first: Place, { here, isOpen, openModel, show }: VisitOptions): Visits {
  let now: Visit = { ...first, depth: depthNow() };
  const [spots, setSpots] = createSignal<readonly Spot[]>([]);
  const { offered, offer, forget } = createOffer(spots, () => now.depth);
  const put = (visit: Visit): void => {
    history.replaceState(visit, '', location.pathname + location.search + addressOf(visit));
    now = visit;
  };
  const arrive = (jump: Jump | undefined): void => {
    const place: Place = { ...here(), row: jump?.row };
    const change = jump === undefined ? { ...now, row: undefined } : undefined;
    if (change !== undefined && isSamePlace(place, change)) return;
    // A shelf that is closed is no place to go back from.
    if (change !== undefined && isSamePlace(place, { ...change, shelf: false })) return put({ ...now, shelf: false });
    const visit = { ...place, depth: now.depth + 1 };
    // An entry of the browser's history that is not ours, as one of a link within the page, is taken over.
    if (history.state === null && now.depth > 0) return put(visit);
    // What leads here must be there to go back to, also after a reload.
    put(now);
    setSpots((before) => [
      ...before.filter(({ depth }) => depth < now.depth).slice(1 - mostSpots),
      ...(jump === undefined ? [] : [spotOf(now.depth, jump)]),
    ]);
    history.pushState(visit, '', location.pathname + location.search + addressOf(visit));
    now = visit;
    offer();
  };
  /** Shows a visit, and stands where its link was followed, or at its row. */
  const land = (visit: Visit): void => {
    const spot = spots().find(({ depth }) => depth === visit.depth && depth < now.depth);
    // A page that was only loaded again has no focus to give back.
    const isMove = visit.depth !== now.depth;
    setSpots((before) => before.filter(({ depth }) => depth < visit.depth));
    show(spot === undefined ? visit : { ...visit, row: undefined });
    put({ ...here(), row: visit.row, depth: visit.depth });
    offer();
    if (spot !== undefined) requestAnimationFrame(() => standAt(spot));
    else if (isMove) requestAnimationFrame(focusSomething);
  };
  const follow = async (): Promise<void> => {
    const known = visitOf(history.state);
    if (known === undefined) {
      const named = placeNamed(location.hash);
      // An address that somebody has entered; else a visit that is not told yet, or nothing of ours.
      if (named !== undefined) land({ ...here(), ...named, depth: now.depth + 1 });
      else if (history.state !== null) put({ ...here(), depth: depthNow() });
      return;
    }
    if (!isOpen(known.model) && (await openModel(known))) return;
    const isStep = known.depth >= now.depth || known.depth === 0 || spots().some(({ depth }) => depth === known.depth);
    if (isStep || !isSamePlace({ ...known, model: now.model }, now)) return land(known);
    // A place that looks as the one left is no step.
    now = known;
    history.back();
  };
  return {
    arrive,
    follow,
    wayBack: () => offered()?.text,
    goBack: () => {
      const spot = offered();
      if (spot !== undefined) history.go(spot.depth - now.depth);
    },
    forget,
  };
}
