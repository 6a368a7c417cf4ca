import { createMemo, lazy, Show, Suspense, type JSX } from 'solid-js';
import { RadioRow } from '../../kit/choosers/RadioRow';
import { AnswerText } from '../../kit/sections/AnswerText';
import { LiveText } from '../../kit/sections/LiveText';
import { NoAnswer } from '../../kit/sections/NoAnswer';
import { QuestionScreen } from '../../kit/sections/QuestionScreen';
import { localFormat } from '../../app/preferences/localFormat';
import { yearStartSetting } from '../../app/preferences/settings/beds';
import { MethodLink } from '../../kit/method/MethodLink';
import type { ScreenProps } from '../../app/screenProps';
import { planScheduleOf, samePlanSchedule, type PlanSchedule } from '../../../present/beds/planSchedule';
import { ByWeeksView } from './stages/ByWeeksView';
import { CrowdingPart } from './crowding/CrowdingPart';
import { mondayOf } from '../../../present/text/dates';
import { FaultLinks } from './FaultLinks';
import { createBedsPlan } from './bedsPlan';
import { createYearStudy } from './yearStudy';
import { scheduleView } from '../../../present/beds/stages/schedules';
import { Waiting } from '../../kit/sections/Waiting';
import { StageTable } from './stages/StageTable';
import { stageSentences } from '../../../present/beds/stages/sentences';
import { YearAndWork } from './year/YearAndWork';
import { bedsTexts } from '../../../present/beds/texts';
import '../../kit/sections/answers.css';
import './styles.css';

// Its pictures need the chart library, for which the beds should not wait.
const BestWeeks = lazy(async () => ({ default: (await import('./bestWeeks/BestWeeks')).BestWeeks }));

/** Beds: what a crop schedule finishes, what rounding to whole boards costs, a year on the water, and a week's work. */
export function Beds(props: ScreenProps): JSX.Element {
  const { plan, nameOf, options, chosen, choose } = createBedsPlan(props);
  const planSchedule = createMemo(
    () => {
      const values = props.store.values()[plan()];
      return values && planScheduleOf(props.store.model().cells, values);
    },
    undefined,
    { equals: samePlanSchedule },
  );
  return (
    <QuestionScreen question="beds" print={bedsTexts.print}>
      <Show
        when={planSchedule()}
        fallback={<NoAnswer finding={bedsTexts.noSchedule} remedy={bedsTexts.makesSchedule} />}>
        {(found) => (
          <>
            <Show when={props.against !== undefined}>
              <RadioRow legend={bedsTexts.plan} options={options()} chosen={chosen()} choose={choose} />
            </Show>
            <Answer
              {...props}
              planSchedule={found()}
              plan={plan()}
              name={nameOf(plan())}
              alone={props.store.shape().plans.length === 1}
            />
          </>
        )}
      </Show>
    </QuestionScreen>
  );
}

interface AnswerProps extends ScreenProps {
  readonly planSchedule: PlanSchedule;
  readonly name: string;
  /** Whether the model has no other plan. */
  readonly alone: boolean;
}

function Answer(props: AnswerProps): JSX.Element {
  const view = createMemo(() => scheduleView(props.planSchedule));
  const found = createMemo(() => stageSentences(view(), props.alone ? '' : props.name, localFormat));
  const start = createMemo(() => props.choice.get(yearStartSetting) ?? mondayOf(new Date()));
  const yearStudy = createYearStudy(
    () => props.planSchedule,
    () => start(),
  );
  return (
    <>
      <LiveText>
        <AnswerText main={found().main} more={found().more} />
      </LiveText>
      <FaultLinks faults={view().faults} cells={props.planSchedule.cells} quiet={false} goTo={props.goTo} />
      <StageTable view={view()} goTo={props.goTo} />
      <MethodLink choice={props.choice} entry="balanced" />
      <Show when={view().byWeeks}>
        {(split) => (
          <>
            <ByWeeksView found={split()} names={props.planSchedule.names} />
            <MethodLink choice={props.choice} entry="by weeks" />
          </>
        )}
      </Show>
      <Show when={yearStudy()} fallback={<Waiting />}>
        {(worked) => <YearAndWork {...props} worked={worked()} known={view().faults} />}
      </Show>
      <CrowdingPart {...props} />
      <Suspense fallback={<Waiting />}>
        <BestWeeks {...props} />
      </Suspense>
    </>
  );
}
