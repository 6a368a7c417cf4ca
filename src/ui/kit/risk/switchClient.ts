import { createEffect, createSignal, onCleanup, untrack, type Accessor } from 'solid-js';
import { pause } from '../background/pause';
import type { SwitchRequest, SwitchReply } from '../../../jobs/switchSearch';

interface Answered {
  readonly of: SwitchRequest;
  readonly reply: SwitchReply;
}

/** A search for switching values, as far as it has come. */
export interface SwitchClient {
  readonly answered: Accessor<Answered | undefined>;
  readonly broken: Accessor<boolean>;
}

/** Searches beside the page: a newer one ends the one under way. */
export function createSwitchClient(wanted: Accessor<SwitchRequest>, inSight: Accessor<boolean>): SwitchClient {
  const [answered, setAnswered] = createSignal<Answered>();
  const [broken, setBroken] = createSignal(false);
  let worker: Worker | undefined;
  let timer: ReturnType<typeof setTimeout> | undefined;
  const close = (): void => {
    clearTimeout(timer);
    worker?.terminate();
    worker = undefined;
  };
  const search = (ask: SwitchRequest): void => {
    worker = new Worker(new URL('../../../jobs/switchWorker.ts', import.meta.url), { type: 'module' });
    worker.addEventListener('message', ({ data }: MessageEvent<SwitchReply>) => {
      setAnswered({ of: ask, reply: data });
      close();
    });
    worker.addEventListener('error', (event) => {
      event.preventDefault();
      close();
      setBroken(true);
    });
    worker.postMessage(ask);
  };
  createEffect(() => {
    const ask = wanted();
    close();
    setBroken(false);
    const known = untrack(answered);
    if (inSight() && known?.of !== ask) timer = setTimeout(() => search(ask), pause);
  });
  onCleanup(close);
  return { answered, broken };
}
