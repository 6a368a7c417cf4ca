import { createEffect, createMemo, Show, type JSX } from 'solid-js';
import type { Cell } from '../../model/cell';
import { NumberField } from '../breakeven/NumberField';
import { Choices } from '../finding/Choices';
import { printedUnit } from '../printedUnit';
import type { ScreenProps } from '../screen';
import { createRiskClient, type RiskClient } from './client';
import { Drivers } from './Drivers';
import { Progress } from './Progress';
import type { Ask, Found } from './reply';
import { createSettings, type Settings } from './settings';
import { SpreadView } from './SpreadView';
import type { Look } from './spreadPicture';
import { ofWhat, type Looked } from './subject';
import type { Question } from './told';
import { WholeField } from './WholeField';
import { drawLimits, seedLimits } from './wholeNumber';
import { Worth } from './Worth';

interface DrawsProps extends ScreenProps {
  readonly result: Cell;
  readonly looked: Looked;
  /** The result today. */
  readonly today: number;
}

function sameSubject(a: Ask, b: Ask): boolean {
  return a.subject.result === b.subject.result && a.subject.plan === b.subject.plan
    && a.subject.against === b.subject.against && a.beside === b.beside && a.target === b.target;
}

/** Draws of a result that keep up with the model. */
export function Draws(props: DrawsProps): JSX.Element {
  const settings = createSettings(() => props.choice, () =>
    `${props.result.name}${props.looked.less === undefined ? '' : ' difference'}`);
  const wanted = createMemo((): Ask => ({
    sheet: props.live.model().sheet,
    subject: { result: props.result.id, plan: props.looked.plan, against: props.looked.less },
    beside: props.looked.beside,
    draws: settings.draws(),
    seed: settings.seed(),
    target: settings.target(),
  }));
  const client = createRiskClient();
  createEffect(() => client.ask(wanted()));
  // What was found before an edit stays until the next picture is there; what answers another question does not.
  const found = createMemo(() => {
    const { found: known, of } = client.shown();
    const fits = of !== undefined && sameSubject(of, wanted());
    const sameCells = of?.sheet.rows.length === wanted().sheet.rows.length;
    return fits && sameCells ? known : undefined;
  });
  const question = createMemo((): Question => ({
    result: props.result, of: ofWhat(props.live.model(), props.looked), target: settings.target(),
  }));
  return (
    <>
      <Fields settings={settings} unit={printedUnit(props.result.unitText)} />
      <Progress shown={client.shown()} draws={settings.draws()}
        stop={() => client.stop()} again={() => client.again()} />
      <Show when={found()}>
        {(known) => <Answers {...props} found={known()} question={question()} settings={settings} client={client} />}
      </Show>
    </>
  );
}

function Fields(props: { settings: Settings; unit: string }): JSX.Element {
  return (
    <div class="settings">
      <NumberField label="above" unit={props.unit} text={props.settings.targetText()}
        onNumber={(text) => props.settings.setTarget(text)} />
      <WholeField label="draws" number={props.settings.draws()} limits={drawLimits}
        onNumber={(draws) => props.settings.setDraws(draws)} />
      <WholeField label="seed" number={props.settings.seed()} limits={seedLimits}
        onNumber={(seed) => props.settings.setSeed(seed)} />
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
  const cells = (): readonly Cell[] => props.live.model().cells;
  const busy = (): boolean => props.client.shown().state === 'busy';
  return (
    <Show when={!props.found.certain} fallback={<Certain result={props.result} />}>
      <Show when={props.found.spread} fallback={<NoResults found={props.found} />}>
        {(spread) => (
          <>
            <SpreadView spread={spread()} found={props.found} question={props.question} looked={props.looked}
              look={props.settings.look()} today={props.today} model={props.live.model()}>
              <Choices legend="draw it as" options={looks} chosen={props.settings.look()}
                choose={(look) => props.settings.setLook(look)} />
            </SpreadView>
            <Show when={props.found.indices} fallback={<Waiting when={busy()} what="what drives the spread" />}>
              {(indices) => <Drivers indices={indices()} cells={cells()} goTo={props.goTo} />}
            </Show>
            <Show when={props.found.details}>
              {(details) => <Worth details={details()} result={props.result} cells={cells()} goTo={props.goTo} />}
            </Show>
          </>
        )}
      </Show>
    </Show>
  );
}

function Waiting(props: { when: boolean; what: string }): JSX.Element {
  return <Show when={props.when}><p class="quiet">Still to come: {props.what}.</p></Show>;
}

function Certain(props: { result: Cell }): JSX.Element {
  return (
    <div class="empty">
      <p class="finding">No entry with a range touches <b>{props.result.label}</b>, so there is nothing to draw.</p>
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
