import { createMemo, For, Show, type JSX } from 'solid-js';
import { decimal } from '../../../core/number';
import type { Model } from '../../../model/model';
import { ChartCanvas } from '../../kit/charts/ChartCanvas';
import { createChartArea } from '../../kit/charts/chartArea';
import { openLines } from '../../kit/charts/lines';
import type { LinesPicture } from '../../../present/picture/linesPicture';
import { sentences, textOf } from '../../../present/text/phrase';
import { AnswerText } from '../../kit/sections/AnswerText';
import { LiveText } from '../../kit/sections/LiveText';
import { Sentence } from '../../kit/sections/Sentence';
import { localFormat } from '../../app/preferences/localFormat';
import { withUnit } from '../../../present/text/withUnit';
import type { DrawsFound } from '../../../present/howSure/drawsFound';
import { spreadPicture, type SpreadStyle } from '../../../present/howSure/spreadPicture';
import { SpreadTables } from './SpreadTables';
import type { PlanSelection } from '../../../present/results/planSelection';
import type { DrawSpread } from '../../../present/howSure/summary';
import { average, remarks, sentence, type SpreadQuestion } from '../../../present/howSure/sentences';

interface SpreadViewProps {
  readonly spread: DrawSpread;
  readonly found: DrawsFound;
  readonly question: SpreadQuestion;
  readonly selection: PlanSelection;
  readonly style: SpreadStyle;
  readonly today: number;
  readonly model: Model;
  readonly children: JSX.Element;
}

type Letter = 'A' | 'B';

/** Letters and names of the sets of draws, that asked about first. */
function setsOf({ selection, model, question }: SpreadViewProps): { letter: Letter | ''; name: string }[] {
  const name = (plan: number): string => model.plans[plan]?.name ?? '';
  const { letter, plan, beside } = selection;
  if (beside === undefined) return [{ letter, name: question.of.kind === 'difference' ? 'difference' : name(plan) }];
  return [
    { letter, name: name(plan) },
    { letter: letter === 'A' ? 'B' : 'A', name: name(beside) },
  ];
}

/** The draws: what they say, their picture, and the same numbers as tables. */
export function SpreadView(props: SpreadViewProps): JSX.Element {
  const sets = createMemo(() => setsOf(props));
  const main = createMemo(() => sentence(props.question, props.spread.main, localFormat));
  const more = createMemo(() => average(props.spread.main, props.question, localFormat));
  const wrong = createMemo(() => remarks(props.found, props.model.cells));
  return (
    <>
      <LiveText>
        <AnswerText main={main()} more={more()} />
        <Show when={wrong().length > 0}>
          <p class="message fault">
            <Sentence phrase={wrong()} />
          </p>
        </Show>
      </LiveText>
      {props.children}
      <SpreadChart {...props} sets={sets()} label={textOf(sentences(main(), more()))} />
      <SpreadTables
        spread={props.spread}
        question={props.question}
        names={sets().map(({ letter, name }) => `${letter} ${name}`.trim())}
      />
    </>
  );
}

interface ChartProps extends SpreadViewProps {
  readonly sets: readonly { readonly letter: Letter | ''; readonly name: string }[];
  readonly label: string;
}

function heightFor(width: number): number {
  return Math.round(Math.min(380, Math.max(240, width * 0.5)));
}

function SpreadChart(props: ChartProps): JSX.Element {
  const chartArea = createChartArea();
  const picture = createMemo((): LinesPicture | undefined => {
    const ink = chartArea.ink();
    if (ink === undefined) return undefined;
    const { target, result } = props.question;
    const drawing = {
      spread: props.spread,
      style: props.style,
      letters: props.sets.map(({ letter }) => letter),
      target,
      targetText: localFormat.value(decimal(target), result.unit),
      today: props.today,
      xTitle: withUnit(result),
    };
    return spreadPicture(drawing, ink, { width: chartArea.width(), height: heightFor(chartArea.width()) }, localFormat);
  });
  return (
    <figure class="spread">
      <figcaption class="key">
        <span class="key-what">{props.style === 'curve' ? 'share of draws below' : 'share of draws'}</span>
        <Show when={props.spread.beside}>
          <For each={props.sets}>
            {({ letter, name }) => (
              <span class="key-set" data-letter={letter}>
                <span class={props.style === 'curve' ? 'line-swatch' : 'swatch'} aria-hidden="true" /> {letter} {name}
              </span>
            )}
          </For>
        </Show>
        <span>bar on top: half of the draws; line: 90 of 100; stroke: the middle one</span>
      </figcaption>
      <ChartCanvas chartArea={chartArea} label={props.label} open={openLines} picture={picture()} />
    </figure>
  );
}
