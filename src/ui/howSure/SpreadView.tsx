import { createMemo, For, Show, type JSX } from 'solid-js';
import { decimal } from '../../core/number';
import type { Model } from '../../model/model';
import { ChartCanvas } from '../chart/ChartCanvas';
import { createEasel } from '../chart/easel';
import { openLines, type LinesPicture } from '../chart/lines';
import { sentences, textOf } from '../finding/phrase';
import { FindingText } from '../finding/FindingText';
import { Said } from '../finding/Said';
import { Sentence } from '../finding/Sentence';
import { here } from '../here';
import { printedUnit } from '../printedUnit';
import type { Found } from './reply';
import { spreadPicture, type Look } from './spreadPicture';
import { SpreadTables } from './SpreadTables';
import type { Looked } from '../finding/looked';
import type { Spread } from './summary';
import { average, remarks, sentence, type Question } from './told';

interface SpreadViewProps {
  readonly spread: Spread;
  readonly found: Found;
  readonly question: Question;
  readonly looked: Looked;
  readonly look: Look;
  readonly today: number;
  readonly model: Model;
  readonly children: JSX.Element;
}

type Letter = 'A' | 'B';

/** Letters and names of the sets of draws, that asked about first. */
function setsOf({ looked, model, question }: SpreadViewProps): { letter: Letter | ''; name: string }[] {
  const name = (plan: number): string => model.plans[plan]?.name ?? '';
  const { letter, plan, beside } = looked;
  if (beside === undefined) return [{ letter, name: question.of.kind === 'difference' ? 'difference' : name(plan) }];
  return [
    { letter, name: name(plan) },
    { letter: letter === 'A' ? 'B' : 'A', name: name(beside) },
  ];
}

/** The draws: what they say, their picture, and the same numbers as tables. */
export function SpreadView(props: SpreadViewProps): JSX.Element {
  const sets = createMemo(() => setsOf(props));
  const main = createMemo(() => sentence(props.question, props.spread.main, here));
  const more = createMemo(() => average(props.spread.main, props.question, here));
  const wrong = createMemo(() => remarks(props.found, props.model.cells));
  return (
    <>
      <Said>
        <FindingText main={main()} more={more()} />
        <Show when={wrong().length > 0}>
          <p class="message fault">
            <Sentence phrase={wrong()} />
          </p>
        </Show>
      </Said>
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
  const easel = createEasel();
  const unit = (): string => printedUnit(props.question.result.unitText);
  const picture = createMemo((): LinesPicture | undefined => {
    const ink = easel.ink();
    if (ink === undefined) return undefined;
    const { target, result } = props.question;
    const drawing = {
      spread: props.spread,
      look: props.look,
      letters: props.sets.map(({ letter }) => letter),
      target,
      targetText: here.value(decimal(target), result.unit),
      today: props.today,
      xTitle: [result.label, unit()].filter(Boolean).join(', '),
    };
    return spreadPicture(drawing, ink, { width: easel.width(), height: heightFor(easel.width()) }, here);
  });
  return (
    <figure class="spread">
      <figcaption class="key">
        <span class="key-what">{props.look === 'curve' ? 'share of draws below' : 'share of draws'}</span>
        <Show when={props.spread.beside}>
          <For each={props.sets}>
            {({ letter, name }) => (
              <span class="key-set" data-letter={letter}>
                <span class={props.look === 'curve' ? 'line-swatch' : 'swatch'} aria-hidden="true" /> {letter} {name}
              </span>
            )}
          </For>
        </Show>
        <span>bar on top: half of the draws; line: 90 of 100; stroke: the middle one</span>
      </figcaption>
      <ChartCanvas easel={easel} label={props.label} open={openLines} picture={picture()} />
    </figure>
  );
}
