import { createMemo, Show, type JSX } from 'solid-js';
import type { Cell } from '../../model/cell';
import { NumberField } from '../breakeven/NumberField';
import { Choices } from '../finding/Choices';
import { ofWhat, type Looked } from '../finding/looked';
import type { Phrase } from '../finding/phrase';
import { Sentence } from '../finding/Sentence';
import { printedUnit } from '../printedUnit';
import type { ScreenProps } from '../screen';
import type { RiskClient } from './client';
import { createDraws } from './createDraws';
import { Drivers } from './Drivers';
import { Progress } from './Progress';
import type { Found } from './reply';
import type { Settings } from './settings';
import { SpreadView } from './SpreadView';
import type { Look } from './spreadPicture';
import type { Question } from './told';
import { WholeField } from './WholeField';
import { drawLimits, seedLimits } from './wholeNumber';
import { Worth } from './Worth';
import '../finding/part.css';

interface DrawsProps extends ScreenProps {
  readonly result: Cell;
  readonly looked: Looked;
  /** The result today. */
  readonly today: number;
  /** Where the draws are not about today's numbers; blank where they are. */
  readonly remark: Phrase;
}

/** Draws of a result, and what there is to say of them. */
export function Draws(props: DrawsProps): JSX.Element {
  const { settings, client, found } = createDraws(props, () => true);
  const question = createMemo((): Question => ({
    result: props.result,
    of: ofWhat(props.live.model(), props.looked),
    target: settings.target(),
  }));
  return (
    <>
      <Fields settings={settings} unit={printedUnit(props.result.unitText)} />
      <Progress
        shown={client.shown()}
        draws={settings.draws()}
        stop={() => client.stop()}
        again={() => client.again()}
      />
      <Show when={found()}>
        {(known) => <Answers {...props} found={known()} question={question()} settings={settings} client={client} />}
      </Show>
    </>
  );
}

function Fields(props: { settings: Settings; unit: string }): JSX.Element {
  return (
    <div class="settings">
      <NumberField
        label="above"
        unit={props.unit}
        text={props.settings.targetText()}
        onNumber={(text) => props.settings.setTarget(text)}
      />
      <WholeField
        label="draws"
        number={props.settings.draws()}
        limits={drawLimits}
        onNumber={(draws) => props.settings.setDraws(draws)}
      />
      <WholeField
        label="seed"
        number={props.settings.seed()}
        limits={seedLimits}
        onNumber={(seed) => props.settings.setSeed(seed)}
      />
    </div>
  );
}

const looks: readonly { value: Look; label: string }[] = [
  { value: 'histogram', label: 'how often' },
  { value: 'curve', label: 'added up' },
];

interface AnswersProps extends DrawsProps {
  readonly found: Found;
  readonly question: Question;
  readonly settings: Settings;
  readonly client: RiskClient;
}

function Answers(props: AnswersProps): JSX.Element {
  const cells = (): readonly Cell[] => props.live.shape().cells;
  const busy = (): boolean => props.client.shown().state === 'busy';
  return (
    <Show when={!props.found.certain} fallback={<Certain result={props.result} />}>
      <Show when={props.found.spread} fallback={<NoResults found={props.found} />}>
        {(spread) => (
          <>
            <Show when={props.remark.length > 0}>
              <p>
                <Sentence phrase={props.remark} />
              </p>
            </Show>
            <SpreadView
              spread={spread()}
              found={props.found}
              question={props.question}
              looked={props.looked}
              look={props.settings.look()}
              today={props.today}
              model={props.live.model()}>
              <Choices
                legend="draw it as"
                options={looks}
                chosen={props.settings.look()}
                choose={(look) => props.settings.setLook(look)}
              />
            </SpreadView>
            <Show when={props.found.indices} fallback={<Waiting when={busy()} what="what drives the spread" />}>
              {(indices) => (
                <section class="part" aria-labelledby="drivers">
                  <h3 id="drivers">Which guesses drive the spread</h3>
                  <Drivers indices={indices()} cells={cells()} choice={props.choice} goTo={props.goTo} />
                </section>
              )}
            </Show>
            <Show when={props.found.details}>
              {(details) => (
                <Worth
                  details={details()}
                  result={props.result}
                  cells={cells()}
                  choice={props.choice}
                  goTo={props.goTo}
                />
              )}
            </Show>
          </>
        )}
      </Show>
    </Show>
  );
}

function Waiting(props: { when: boolean; what: string }): JSX.Element {
  return (
    <Show when={props.when}>
      <p class="quiet">Still to come: {props.what}.</p>
    </Show>
  );
}

function Certain(props: { result: Cell }): JSX.Element {
  return (
    <div class="empty">
      <p class="finding">
        No entry with a range touches <b>{props.result.label}</b>, so there is nothing to draw.
      </p>
      <p>Give an entry that you are not sure of a low and a high: its range then says how far off it may be.</p>
    </div>
  );
}

function NoResults(props: { found: Found }): JSX.Element {
  return (
    <Show when={props.found.details}>
      <div class="empty">
        <p class="finding">In none of the draws can it be computed.</p>
        <p class="message fault">{props.found.details?.failures[0]?.message}</p>
      </div>
    </Show>
  );
}
