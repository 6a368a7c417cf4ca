import { createSignal, onCleanup, type Accessor } from 'solid-js';
import type { Sheet } from '../../../model/sheet';
import { pause } from '../background/pause';
import type { DrawsRequest, DrawsFound, Phase, Reply } from '../../../present/howSure/reply';
import { openWorker, type OpenWorkshop, type Workshop } from './workshop';
import { drawsTexts } from '../../../present/howSure/drawsTexts';

/** What the page knows of the draws asked for. */
export interface Shown {
  readonly state: 'busy' | 'done' | 'stopped' | 'failed';
  readonly phase: Phase;
  /** Of the phase, 0 to 1. */
  readonly share: number;
  /** What is known, with the question that it answers; it may be that before the one under way. */
  readonly found: DrawsFound | undefined;
  readonly of: DrawsRequest | undefined;
  /** Why it failed; blank unless it did. */
  readonly reason: string;
  /** The worker died and was started again. */
  readonly restarted: boolean;
}

/** Draws beside the page, of which the newest question counts. */
export interface RiskClient {
  readonly shown: Accessor<Shown>;
  /** Asks after a short pause, unless another question comes first. */
  ask(wanted: DrawsRequest): void;
  stop(): void;
  /** Asks the last question again. */
  again(): void;
}

const start: Shown = {
  state: 'busy',
  phase: 'draws',
  share: 0,
  found: undefined,
  of: undefined,
  reason: '',
  restarted: false,
};

/** What is known after a report of the question under way. */
export function after(before: Shown, reply: Reply, asked: DrawsRequest | undefined): Shown {
  if ('finished' in reply) return { ...before, state: 'done', share: 1 };
  if ('refused' in reply) return { ...before, state: 'failed', reason: reply.refused };
  const { phase, share, found } = reply.report;
  return found === undefined ? { ...before, phase, share } : { ...before, phase, share, found, of: asked };
}

/** A client that starts its worker with the first question and ends it with the component. */
export function createRiskClient(open: OpenWorkshop = openWorker): RiskClient {
  const [shown, setShown] = createSignal<Shown>(start);
  let workshop: Workshop | undefined;
  let sentSheet: Sheet | undefined;
  let asked: DrawsRequest | undefined;
  let timer: ReturnType<typeof setTimeout> | undefined;
  let id = 0;
  let deaths = 0;

  const heard = (reply: Reply): void => {
    if (reply.id !== id) return;
    if ('finished' in reply) deaths = 0;
    setShown((before) => after(before, reply, asked));
  };
  const close = (): void => {
    workshop?.close();
    workshop = undefined;
    sentSheet = undefined;
  };
  const send = (wanted: DrawsRequest): void => {
    const { sheet, ...rest } = wanted;
    workshop ??= open(heard, died);
    id += 1;
    workshop.post({ ...rest, id, sheet: sheet === sentSheet ? undefined : sheet });
    sentSheet = sheet;
  };
  // One that dies twice over the same question would die a third time.
  const died = (): void => {
    close();
    deaths += 1;
    if (deaths === 1 && asked !== undefined) {
      setShown((before) => ({ ...before, state: 'busy', share: 0, restarted: true }));
      send(asked);
    } else setShown((before) => ({ ...before, state: 'failed', reason: drawsTexts.endedTwice }));
  };
  const quiet = (): void => {
    clearTimeout(timer);
    id += 1;
    workshop?.post('stop');
  };
  const begin = (wanted: DrawsRequest, wait: number): void => {
    quiet();
    deaths = 0;
    asked = wanted;
    setShown((before) => ({ ...start, found: before.found, of: before.of }));
    timer = setTimeout(() => send(wanted), wait);
  };
  onCleanup(() => {
    clearTimeout(timer);
    close();
  });
  return {
    shown,
    ask: (wanted) => begin(wanted, asked === undefined ? 0 : pause),
    stop: () => {
      quiet();
      setShown((before) => ({ ...before, state: 'stopped' }));
    },
    again: () => (asked === undefined ? undefined : begin(asked, 0)),
  };
}
