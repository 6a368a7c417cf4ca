import { createMemo, For, Show, type JSX } from 'solid-js';
import { decimal } from '../../core/number';
import { capital } from '../breakeven/answer';
import { ChartCanvas } from '../chart/ChartCanvas';
import { createEasel } from '../chart/easel';
import { openLines, type LinesPicture } from '../chart/lines';
import { Behind } from '../finding/Behind';
import { sentences, textOf } from '../finding/phrase';
import { Sentence } from '../finding/Sentence';
import { here } from '../here';
import { edgeText } from '../twoWay/edgeText';
import { HeatChart } from '../twoWay/HeatChart';
import { HeatTableView } from '../twoWay/HeatTableView';
import { withUnit } from '../twoWay/table';
import { drawingOf, tableAskOf } from './bestWeeksDrawn';
import type { BestLook } from './bestWeeksLook';
import { linesPicture, timeLines, type TimeLine } from './bestWeeksPicture';
import { bestTold, type BestSpeech } from './bestWeeksTold';

interface BestAnswerProps {
  readonly look: BestLook;
  readonly speech: BestSpeech;
  readonly file: string;
}

const worseText = 'worse than today';

/** The best weeks in words, as lines, as a heat picture and as a table. */
export function BestAnswer(props: BestAnswerProps): JSX.Element {
  const look = createMemo(() => props.look);
  const words = createMemo(() => bestTold(look(), props.speech, here));
  const drawing = createMemo(() => drawingOf(look()));
  const label = (): string => textOf(sentences(words().main, words().more));
  const lines = createMemo(() => timeLines(look(), writeDensity));
  const caption = (): string =>
    withUnit({ label: textOf(capital(props.speech.subject)), unitText: props.speech.result.unitText });
  const table = createMemo(() =>
    tableAskOf(look(), lines(), {
      result: props.speech.result,
      caption: caption(),
      worseText,
      file: props.file,
    }),
  );
  return (
    <>
      <div class="heat-said">
        <p class="finding">
          <Sentence phrase={words().main} />
        </p>
        <For each={[words().more, words().caution]}>
          {(phrase) => (
            <Show when={phrase.length > 0}>
              <p>
                <Sentence phrase={phrase} />
              </p>
            </Show>
          )}
        </For>
      </div>
      <Show when={look().best !== undefined}>
        <LinesFigure look={look()} lines={lines()} what={caption()} label={label()} />
        <HeatChart
          drawing={drawing()}
          label={label()}
          what={caption()}
          downTitle={withUnit(look().ask.density.cell)}
          worseText={worseText}
          write={(value) => edgeText(look().bands, value, props.speech.result.unit, here)}
        />
      </Show>
      <p class="quiet">
        <Sentence phrase={words().looked} />
      </p>
      <Behind summary="The same numbers as a table">
        <HeatTableView ask={table()} />
      </Behind>
    </>
  );
}

function writeDensity(density: number): string {
  return here.full(decimal(Number(density.toPrecision(10))));
}

function LinesFigure(props: { look: BestLook; lines: readonly TimeLine[]; what: string; label: string }): JSX.Element {
  const easel = createEasel();
  const picture = createMemo((): LinesPicture | undefined => {
    const ink = easel.ink();
    if (ink === undefined) return undefined;
    const { ask, best } = props.look;
    const drawing = {
      lines: props.lines,
      today: ask.time.base.toNumber(),
      best: best && { x: best.time.toNumber(), y: best.value },
      xTitle: withUnit(ask.time.cell),
    };
    const room = { width: easel.width(), height: Math.round(Math.min(320, Math.max(220, easel.width() * 0.5))) };
    return linesPicture(drawing, ink, room, here);
  });
  return (
    <figure class="heat">
      <figcaption class="key">
        <span class="key-what">{props.what}</span>
        <span>lines by {withUnit(props.look.ask.density.cell)}, written at their ends</span>
      </figcaption>
      <ChartCanvas easel={easel} label={props.label} open={openLines} picture={picture()} />
    </figure>
  );
}
