import { createMemo, lazy, Show, Suspense, type JSX } from 'solid-js';
import { readIsoDate } from '../../trade/civilDate';
import { Choices, type Option } from '../finding/Choices';
import { FindingText } from '../finding/FindingText';
import { Said } from '../finding/Said';
import { here } from '../here';
import { HowWorked } from '../method/HowWorked';
import type { ScreenProps } from '../screen';
import { askedOf, sameAsked, type Asked } from './asked';
import { ByWeeksView } from './ByWeeksView';
import { CrowdingPart } from './CrowdingPart';
import { mondayOf } from './dates';
import { Faults } from './Faults';
import { createLater } from './later';
import { lookAt } from './look';
import { printOnly } from '../printOnly';
import { StageTable } from './StageTable';
import { told } from './told';
import { YearAndWork } from './YearAndWork';
import '../finding/finding.css';
import './beds.css';

// Its pictures need the chart library, which the beds do not wait for.
const BestWeeks = lazy(async () => ({ default: (await import('./BestWeeks')).BestWeeks }));

type Looked = 'plan' | 'against';

/** The beds: what a crop schedule finishes, what rounding costs, a year on the water, the week's work. */
export function Beds(props: ScreenProps): JSX.Element {
  const looked = (): Looked =>
    props.against !== undefined && props.choice.setting('beds plan') === 'against' ? 'against' : 'plan';
  const plan = (): number => (looked() === 'against' && props.against !== undefined ? props.against : props.plan);
  const nameOf = (index: number | undefined): string => props.live.shape().plans[index ?? -1]?.name ?? '';
  const options = (): Option<Looked>[] => [
    { value: 'against', label: `A ${nameOf(props.against)}` },
    { value: 'plan', label: `B ${nameOf(props.plan)}` },
  ];
  const asked = createMemo(
    () => {
      const values = props.live.values()[plan()];
      return values && askedOf(props.live.model().cells, values);
    },
    undefined,
    { equals: sameAsked },
  );
  return (
    <section class="question-screen beds" aria-labelledby="beds">
      <h2 class="heard" id="beds">
        Beds
      </h2>
      <Show when={asked()} fallback={<NoSchedule />}>
        {(found) => (
          <>
            <Show when={props.against !== undefined}>
              <Choices
                legend="Beds of"
                options={options()}
                chosen={looked()}
                choose={(value) => props.choice.setSetting('beds plan', value)}
              />
            </Show>
            <Answer
              {...props}
              asked={found()}
              plan={plan()}
              name={nameOf(plan())}
              alone={props.live.shape().plans.length === 1}
            />
          </>
        )}
      </Show>
    </section>
  );
}

function NoSchedule(): JSX.Element {
  return (
    <div class="empty">
      <p class="finding">This model has no crop schedule.</p>
      <p>Entries that the column crop of its file tags with boards, interval, stage 1 time and the like make one.</p>
    </div>
  );
}

interface AnswerProps extends ScreenProps {
  readonly asked: Asked;
  readonly name: string;
  /** Whether the model has no other plan. */
  readonly alone: boolean;
}

function Answer(props: AnswerProps): JSX.Element {
  const look = createMemo(() => lookAt(props.asked));
  const found = createMemo(() => told(look(), props.alone ? '' : props.name, here));
  const start = createMemo(() => readIsoDate(props.choice.setting('beds start')) ?? mondayOf(new Date()));
  const later = createLater(
    () => props.asked,
    () => start(),
  );
  const stands = (): void => props.choice.setSetting('question', 'beds');
  const print = (): void => {
    stands();
    printOnly('beds');
  };
  return (
    <>
      <Said>
        <FindingText main={found().main} more={found().more} />
      </Said>
      <Faults faults={look().faults} cells={props.asked.cells} quiet={false} goTo={props.goTo} />
      <StageTable look={look()} goTo={props.goTo} />
      <HowWorked choice={props.choice} entry="balanced" />
      <Show when={look().byWeeks}>
        {(split) => (
          <>
            <ByWeeksView found={split()} names={props.asked.names} />
            <HowWorked choice={props.choice} entry="by weeks" />
          </>
        )}
      </Show>
      <Show when={later()}>
        {(worked) => <YearAndWork {...props} worked={worked()} known={look().faults} beforePrint={stands} />}
      </Show>
      <CrowdingPart {...props} />
      <Suspense>
        <BestWeeks {...props} />
      </Suspense>
      <p class="print-all">
        <button type="button" class="word" onClick={print}>
          Print the beds
        </button>
      </p>
    </>
  );
}
