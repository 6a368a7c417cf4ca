import { createMemo, createSignal, lazy, Show, Suspense, type JSX } from 'solid-js';
import { sentences, textOf } from '../../../../present/text/phrase';
import { AnswerText } from '../../../kit/sections/AnswerText';
import { LiveText } from '../../../kit/sections/LiveText';
import { Waiting } from '../../../kit/sections/Waiting';
import { NumbersBehind } from '../../../kit/sections/NumbersBehind';
import { localFormat } from '../../../app/preferences/localFormat';
import { tornadoSentences, type TornadoSubject } from '../../../../present/whatMatters/tornado/sentences';
import { commonDecimals } from '../../../../present/whatMatters/tornado/rows';
import type { ShownTornado } from './shownTornado';
import { TornadoChart } from './TornadoChart';
import { tornadoTexts } from '../../../../present/whatMatters/tornado/texts';
import { commonTexts } from '../../../../present/text/commonTexts';

const TornadoTable = lazy(async () => ({ default: (await import('./TornadoTable')).TornadoTable }));

/** Bars shown at first. */
const few = 8;

interface TornadoViewProps {
  readonly tornado: ShownTornado;
  readonly subject: TornadoSubject;
  readonly letter: 'A' | 'B' | undefined;
  readonly goTo: (cell: number) => void;
}

/** A tornado: sentences, bars and table. */
export function TornadoView(props: TornadoViewProps): JSX.Element {
  const [all, setAll] = createSignal(false);
  const bars = (): ShownTornado['bars'] => props.tornado.bars;
  const found = createMemo(() => tornadoSentences(props.subject, bars(), localFormat));
  const label = (): string => textOf(sentences(found().main, found().more));
  const inSight = createMemo(() => (all() ? bars() : bars().slice(0, few)));
  const decimals = createMemo(() => commonDecimals(bars(), props.subject));
  return (
    <>
      <Show when={props.tornado.share < 1}>
        <Waiting class="busy">{tornadoTexts.lookedAt(Math.round(props.tornado.share * 100))}</Waiting>
      </Show>
      <Show when={props.tornado.share === 1}>
        <LiveText>
          <AnswerText main={found().main} more={found().more} />
        </LiveText>
      </Show>
      <Show when={bars().length > 0}>
        <TornadoChart
          bars={inSight()}
          subject={props.subject}
          decimals={decimals()}
          letter={props.letter}
          label={label()}
          exact={props.tornado.exact}
          goTo={props.goTo}
        />
        <Show when={bars().length > few}>
          <button type="button" class="link more" aria-expanded={all()} onClick={() => setAll(!all())}>
            {all() ? tornadoTexts.showFirst(few) : tornadoTexts.showAll(bars().length)}
          </button>
        </Show>
        <NumbersBehind summary={commonTexts.numbersAsTable}>
          <Suspense>
            <TornadoTable
              bars={bars()}
              subject={props.subject}
              decimals={decimals()}
              exact={props.tornado.exact}
              goTo={props.goTo}
            />
          </Suspense>
        </NumbersBehind>
      </Show>
    </>
  );
}
