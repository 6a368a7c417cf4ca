import { createMemo, For, Show, type JSX } from 'solid-js';
import { decimal } from '../../../core/number';
import type { Model } from '../../../model/model';
import { ChartCanvas } from '../../kit/charts/ChartCanvas';
import { openLines } from '../../kit/charts/lines';
import type { LinesPicture } from '../../../present/picture/linesPicture';
import type { ChartInk } from '../../../present/picture/ink';
import { sentences, textOf } from '../../../present/text/phrase';
import { AnswerText } from '../../kit/sections/AnswerText';
import { LiveText } from '../../kit/sections/LiveText';
import { Sentence } from '../../kit/sections/Sentence';
import { localFormat } from '../../app/preferences/localFormat';
import { withUnit } from '../../../present/text/withUnit';
import type { DrawsFound } from '../../../present/howSure/drawsFound';
import { spreadPicture, type SpreadStyle } from '../../../present/howSure/spreadPicture';
import { spreadKey, spreadTitle } from '../../../present/howSure/spreadKey';
import { SpreadTables } from './SpreadTables';
import type { PlanSelection } from '../../../present/results/planSelection';
import type { DrawSpread } from '../../../present/howSure/summary';
import { average, remarks, sentence, type SpreadQuestion } from '../../../present/howSure/sentences';
import { spreadTexts } from '../../../present/howSure/texts';
import { drawSets, setHead, type DrawSet } from '../../../present/howSure/drawSets';

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

/** The draws: sentences, picture and tables. */
export function SpreadView(props: SpreadViewProps): JSX.Element {
  const sets = createMemo(() =>
    drawSets(
      props.selection,
      props.model.plans.map(({ name }) => name),
    ),
  );
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
      <SpreadTables spread={props.spread} question={props.question} names={sets().map(setHead)} />
    </>
  );
}

interface ChartProps extends SpreadViewProps {
  readonly sets: readonly DrawSet[];
  readonly label: string;
}

function heightFor(width: number): number {
  return Math.round(Math.min(380, Math.max(240, width * 0.5)));
}

function SpreadChart(props: ChartProps): JSX.Element {
  const draw = (ink: ChartInk, width: number): LinesPicture => {
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
    return spreadPicture(drawing, ink, { width, height: heightFor(width) }, localFormat);
  };
  return (
    <figure class="spread">
      <figcaption class="key">
        <span class="key-what">{spreadTexts.shares[props.style]}</span>
        <Show when={props.spread.beside}>
          <For each={props.sets}>
            {(set) => (
              <span class="key-set" data-letter={set.letter}>
                <span class={props.style === 'curve' ? 'line-swatch' : 'swatch'} aria-hidden="true" /> {setHead(set)}
              </span>
            )}
          </For>
        </Show>
        <span>{spreadTexts.box}</span>
      </figcaption>
      <ChartCanvas
        title={spreadTitle(props.question.result, props.style)}
        label={props.label}
        open={openLines}
        draw={draw}
        parts={() => ({
          key: (ink) => spreadKey(props.spread.beside === undefined ? [] : props.sets, props.style, ink),
        })}
      />
    </figure>
  );
}
