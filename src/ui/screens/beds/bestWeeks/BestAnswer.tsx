import { createMemo, For, Show, type JSX } from 'solid-js';
import { decimal } from '../../../../core/number';
import { ChartCanvas } from '../../../kit/charts/ChartCanvas';
import { openLines } from '../../../kit/charts/lines';
import type { ChartInk } from '../../../../present/picture/ink';
import { keyText } from '../../../../present/picture/keySigns';
import type { LinesPicture } from '../../../../present/picture/linesPicture';
import { NumbersBehind } from '../../../kit/sections/NumbersBehind';
import { capital, sentences, textOf } from '../../../../present/text/phrase';
import { Sentence } from '../../../kit/sections/Sentence';
import { localFormat } from '../../../app/preferences/localFormat';
import { edgeText } from '../../../../present/heat/edgeText';
import { HeatChart } from '../../../kit/heat/HeatChart';
import { HeatTableView } from '../../../kit/heat/HeatTableView';
import { withUnit } from '../../../../present/text/withUnit';
import { drawingOf, tableRequestOf } from '../../../../present/beds/bestWeeks/drawing';
import type { BestWeeksResult } from '../../../../present/beds/bestWeeks/search';
import { timeLinesPicture, timeLines, type TimeLine } from '../../../../present/beds/bestWeeks/timeLines';
import { bestWeeksSentences, type BestWeeksContext } from '../../../../present/beds/bestWeeks/sentences';
import { bestWeeksTexts } from '../../../../present/beds/bestWeeks/texts';
import { commonTexts } from '../../../../present/text/commonTexts';

interface BestAnswerProps {
  readonly result: BestWeeksResult;
  readonly speech: BestWeeksContext;
}

/** The best weeks in words, as lines, as a heat picture and as a table. */
export function BestAnswer(props: BestAnswerProps): JSX.Element {
  const result = createMemo(() => props.result);
  const words = createMemo(() => bestWeeksSentences(result(), props.speech, localFormat));
  const drawing = createMemo(() => drawingOf(result()));
  const label = (): string => textOf(sentences(words().main, words().more));
  const lines = createMemo(() => timeLines(result(), writeDensity));
  const caption = (): string =>
    withUnit({ label: textOf(capital(props.speech.subject)), unitText: props.speech.result.unitText });
  const table = createMemo(() =>
    tableRequestOf(result(), lines(), {
      result: props.speech.result,
      caption: caption(),
      worseText: bestWeeksTexts.worse,
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
      <Show when={result().best !== undefined}>
        <LinesFigure result={result()} lines={lines()} what={caption()} label={label()} />
        <HeatChart
          drawing={drawing()}
          label={label()}
          what={caption()}
          downTitle={withUnit(result().ask.density.cell)}
          worseText={bestWeeksTexts.worse}
          write={(value) => edgeText(result().bands, value, props.speech.result.unit, localFormat)}
        />
      </Show>
      <p class="quiet">
        <Sentence phrase={words().scope} />
      </p>
      <NumbersBehind summary={commonTexts.numbersAsTable}>
        <HeatTableView ask={table()} />
      </NumbersBehind>
    </>
  );
}

function writeDensity(density: number): string {
  return localFormat.full(decimal(Number(density.toPrecision(10))));
}

function LinesFigure(props: {
  result: BestWeeksResult;
  lines: readonly TimeLine[];
  what: string;
  label: string;
}): JSX.Element {
  const draw = (ink: ChartInk, width: number): LinesPicture => {
    const { ask, best } = props.result;
    const drawing = {
      lines: props.lines,
      today: ask.time.base.toNumber(),
      best: best && { x: best.time.toNumber(), y: best.value },
      xTitle: withUnit(ask.time.cell),
    };
    const room = { width, height: Math.round(Math.min(320, Math.max(220, width * 0.5))) };
    return timeLinesPicture(drawing, ink, room, localFormat);
  };
  const key = (): string => bestWeeksTexts.lines(withUnit(props.result.ask.density.cell));
  return (
    <figure class="heat">
      <figcaption class="key">
        <span class="key-what">{props.what}</span>
        <span>{key()}</span>
      </figcaption>
      <ChartCanvas
        title={props.what}
        label={props.label}
        open={openLines}
        draw={draw}
        parts={() => ({ key: () => [keyText(key())] })}
      />
    </figure>
  );
}
