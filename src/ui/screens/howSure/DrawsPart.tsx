import { createMemo, Show, type JSX } from 'solid-js';
import type { Cell } from '../../../model/cell';
import { NumberField } from '../../kit/fields/NumberField';
import { RadioRow } from '../../kit/choosers/RadioRow';
import { resultScope, type PlanSelection } from '../../../present/results/planSelection';
import type { Phrase } from '../../../present/text/phrase';
import { Waiting } from '../../kit/sections/Waiting';
import { Sentence } from '../../kit/sections/Sentence';
import { printedUnit } from '../../../present/text/printedUnit';
import type { ScreenProps } from '../../app/screenProps';
import type { JobClient } from '../../app/jobs/createJob';
import { createDraws } from '../../kit/risk/createDraws';
import { DriversTable } from '../../kit/risk/DriversTable';
import { DrawsProgress } from '../../kit/risk/DrawsProgress';
import type { DrawsFound } from '../../../present/howSure/drawsFound';
import type { RiskSettings } from '../../kit/risk/settings';
import { SpreadView } from './SpreadView';
import type { SpreadStyle } from '../../../present/howSure/spreadPicture';
import type { SpreadQuestion } from '../../../present/howSure/sentences';
import { WholeField } from '../../kit/fields/WholeField';
import { drawLimits, seedLimits } from '../../../present/text/wholeNumber';
import { InformationValue } from './InformationValue';
import { howSureTexts } from '../../../present/howSure/texts';
import { commonTexts } from '../../../present/text/commonTexts';
import '../../kit/sections/section.css';

interface DrawsProps extends ScreenProps {
  readonly result: Cell;
  readonly selection: PlanSelection;
  /** The result today. */
  readonly today: number;
  /** Which draws are not centred on today's numbers; blank for none. */
  readonly remark: Phrase;
  /** What is said of all plans, below the spread. */
  readonly allPlans: JSX.Element;
}

/** The draws of a result, and the sentences about them. */
export function DrawsPart(props: DrawsProps): JSX.Element {
  const { settings, client, found } = createDraws(props, () => true);
  const question = createMemo((): SpreadQuestion => ({
    result: props.result,
    of: resultScope(props.store.model(), props.selection),
    target: settings.target(),
  }));
  return (
    <>
      <Fields settings={settings} unit={printedUnit(props.result.unitText)} />
      <DrawsProgress
        shown={client.state()}
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

function Fields(props: { settings: RiskSettings; unit: string }): JSX.Element {
  return (
    <div class="settings">
      <NumberField
        label={howSureTexts.above}
        unit={props.unit}
        text={props.settings.targetText()}
        onNumber={(text) => props.settings.setTarget(text)}
      />
      <WholeField
        label={howSureTexts.draws}
        number={props.settings.draws()}
        limits={drawLimits}
        onNumber={(draws) => props.settings.setDraws(draws)}
      />
      <WholeField
        label={howSureTexts.startNumber}
        number={props.settings.seed()}
        limits={seedLimits}
        onNumber={(seed) => props.settings.setSeed(seed)}
      />
    </div>
  );
}

const looks: readonly { value: SpreadStyle; label: string }[] = [
  { value: 'histogram', label: howSureTexts.looks.histogram },
  { value: 'curve', label: howSureTexts.looks.curve },
];

interface AnswersProps extends DrawsProps {
  readonly found: DrawsFound;
  readonly question: SpreadQuestion;
  readonly settings: RiskSettings;
  readonly client: JobClient<'draws'>;
}

function Answers(props: AnswersProps): JSX.Element {
  const cells = (): readonly Cell[] => props.store.shape().cells;
  const busy = (): boolean => props.client.state().state === 'busy';
  return (
    <Show when={!props.found.certain} fallback={<Certain result={props.result}>{props.allPlans}</Certain>}>
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
              selection={props.selection}
              style={props.settings.style()}
              today={props.today}
              model={props.store.model()}>
              <RadioRow
                legend={howSureTexts.drawAs}
                options={looks}
                chosen={props.settings.style()}
                choose={(style) => props.settings.setStyle(style)}
              />
            </SpreadView>
            {props.allPlans}
            <Show when={props.found.indices} fallback={<DriversToCome when={busy()} />}>
              {(indices) => (
                <section class="part" aria-labelledby="drivers">
                  <h3 id="drivers">{commonTexts.spreadDrivers}</h3>
                  <DriversTable indices={indices()} cells={cells()} choice={props.choice} goTo={props.goTo} />
                </section>
              )}
            </Show>
            <Show when={props.found.details}>
              {(details) => (
                <InformationValue
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

function DriversToCome(props: { when: boolean }): JSX.Element {
  return (
    <Show when={props.when}>
      <Waiting>{howSureTexts.driversToCome}</Waiting>
    </Show>
  );
}

function Certain(props: { result: Cell; children: JSX.Element }): JSX.Element {
  return (
    <>
      <div class="empty">
        <p class="finding">
          <Sentence phrase={howSureTexts.nothingToDraw(props.result.label)} />
        </p>
        <p>{howSureTexts.giveRange}</p>
      </div>
      {props.children}
    </>
  );
}

function NoResults(props: { found: DrawsFound }): JSX.Element {
  return (
    <Show when={props.found.details}>
      <div class="empty">
        <p class="finding">{howSureTexts.noResults}</p>
        <p class="message fault">{props.found.details?.failures[0]?.message}</p>
      </div>
    </Show>
  );
}
