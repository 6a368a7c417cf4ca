import { createEffect, createMemo, createSignal, For, onCleanup, Show, untrack, type Accessor, type JSX } from 'solid-js';
import type { Cell } from '../../model/cell';
import { Sentence } from '../finding/Sentence';
import { here } from '../here';
import type { Live } from '../live';
import { HowWorked } from '../method/HowWorked';
import type { Choice } from '../screen';
import { Link } from '../words';
import { readSwitches, type SwitchAsk, type SwitchReply } from './switchSearch';
import { switchLines, switchSentence, type SwitchLine } from './switchTold';
import './switching.css';

interface SwitchingProps {
  readonly live: Live;
  readonly choice: Choice;
  readonly result: Cell;
  /** The plan, and the one that it is less. */
  readonly plans: readonly [plan: number, less: number | undefined];
  readonly inSight: Accessor<boolean>;
  readonly goTo: (cell: number) => void;
}

/** A search starts when nothing has changed for so long, in milliseconds. */
const pause = 250;
/** Lines shown at first. */
const few = 8;

interface Answered {
  readonly of: SwitchAsk;
  readonly reply: SwitchReply;
}

export interface Search {
  readonly answered: Accessor<Answered | undefined>;
  readonly broken: Accessor<boolean>;
}

/** Searches beside the page: a newer one ends the one under way. */
export function createSearch(wanted: Accessor<SwitchAsk>, inSight: Accessor<boolean>): Search {
  const [answered, setAnswered] = createSignal<Answered>();
  const [broken, setBroken] = createSignal(false);
  let worker: Worker | undefined;
  let timer: ReturnType<typeof setTimeout> | undefined;
  const close = (): void => {
    clearTimeout(timer);
    worker?.terminate();
    worker = undefined;
  };
  const search = (ask: SwitchAsk): void => {
    worker = new Worker(new URL('./switchWorker.ts', import.meta.url), { type: 'module' });
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

/** Switching values: of every input, how far it may be wrong before the answer flips. */
export function Switching(props: SwitchingProps): JSX.Element {
  const wanted = createMemo((): SwitchAsk => ({
    sheet: props.live.model().sheet,
    subject: { result: props.result.id, plan: props.plans[0], against: props.plans[1] },
    target: '0',
  }));
  const { answered, broken } = createSearch(() => wanted(), () => props.inSight());
  const newest = createMemo(() => (answered()?.of === wanted() ? answered()?.reply : undefined));
  const found = createMemo(() => newest() && readSwitches(newest()!, props.live.model().cells));
  return (
    <>
      <Show when={found()} fallback={
        <p class="quiet" role="status">
          {broken()
            ? 'The search for where the answer flips ended early. Change any number to start it again.'
            : 'Looking for where the answer flips …'}
        </p>
      }>
        {(all) => (
          <>
            <p class="finding"><Sentence phrase={switchSentence(all(), here)} /></p>
            <Lines found={switchLines(all(), here)} goTo={props.goTo} />
          </>
        )}
      </Show>
      <HowWorked choice={props.choice} entry="switching" />
    </>
  );
}

interface LinesProps {
  readonly found: readonly SwitchLine[];
  readonly goTo: (cell: number) => void;
}

function Lines(props: LinesProps): JSX.Element {
  const [all, setAll] = createSignal(false);
  const shown = (): readonly SwitchLine[] => (all() ? props.found : props.found.slice(0, few));
  return (
    <>
      <div class="table-room" role="region" aria-label="Where each entry flips the answer" tabindex="0">
        <table>
          <caption>Where each entry flips the answer, the others as they stand</caption>
          <thead>
            <tr>
              <th scope="col">entry</th><th scope="col">today</th><th scope="col">flips at</th><th scope="col">change</th>
            </tr>
          </thead>
          <tbody>
            <For each={shown()}>
              {(line) => (
                <tr>
                  <th scope="row"><Link onPress={() => props.goTo(line.cell.id)}>{line.cell.label}</Link></th>
                  <td>{line.today}</td><td>{line.flips}</td><td>{line.change}</td>
                </tr>
              )}
            </For>
          </tbody>
        </table>
      </div>
      <Show when={props.found.length > few}>
        <button type="button" class="link more" aria-expanded={all()} onClick={() => setAll(!all())}>
          {all() ? `Show the thinnest ${few} only` : `Show all ${props.found.length} entries`}
        </button>
      </Show>
    </>
  );
}
