import { createMemo, createSignal, Show, type JSX } from 'solid-js';
import { sentences, textOf } from '../finding/phrase';
import { FindingText } from '../finding/FindingText';
import { Said } from '../finding/Said';
import { here } from '../here';
import { finding, type Asked } from './finding';
import { commonDecimals, resultUnit, rowsOf } from './rows';
import type { ShownTornado } from './shownTornado';
import { TornadoChart } from './TornadoChart';
import { TornadoTable } from './TornadoTable';

/** Bars shown at first. */
const few = 8;

interface TornadoViewProps {
  readonly tornado: ShownTornado;
  readonly asked: Asked;
  readonly letter: 'A' | 'B' | undefined;
  readonly goTo: (cell: number) => void;
}

/** A tornado: its finding, the bars, and the same numbers as a table. */
export function TornadoView(props: TornadoViewProps): JSX.Element {
  const [all, setAll] = createSignal(false);
  const bars = (): ShownTornado['bars'] => props.tornado.bars;
  const found = createMemo(() => finding(props.asked, bars(), here));
  const label = (): string => textOf(sentences(found().main, found().more));
  const inSight = createMemo(() => (all() ? bars() : bars().slice(0, few)));
  const decimals = createMemo(() => commonDecimals(bars(), props.asked));
  return (
    <>
      <Show when={props.tornado.share < 1}>
        <p class="busy" role="status">
          Looked at {Math.round(props.tornado.share * 100)} % of the entries …
        </p>
      </Show>
      <Show when={props.tornado.share === 1}>
        <Said>
          <FindingText main={found().main} more={found().more} />
        </Said>
      </Show>
      <Show when={bars().length > 0}>
        <TornadoChart
          bars={inSight()}
          asked={props.asked}
          decimals={decimals()}
          letter={props.letter}
          label={label()}
          goTo={props.goTo}
        />
        <Show when={bars().length > few}>
          <button type="button" class="link more" aria-expanded={all()} onClick={() => setAll(!all())}>
            {all() ? `Show the first ${few} only` : `Show all ${bars().length}`}
          </button>
        </Show>
        <TornadoTable
          rows={rowsOf(bars(), props.asked, decimals(), here)}
          unit={resultUnit(props.asked)}
          goTo={props.goTo}
        />
      </Show>
    </>
  );
}
