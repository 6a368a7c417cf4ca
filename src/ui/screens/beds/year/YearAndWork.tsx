import { Show, type JSX } from 'solid-js';
import type { Problem } from '../../../../core/problem';
import { MethodLink } from '../../../kit/method/MethodLink';
import { workWeekSetting, yearStartSetting } from '../../../app/preferences/settings/beds';
import type { ScreenProps } from '../../../app/screenProps';
import type { PlanSchedule } from '../../../../present/beds/planSchedule';
import type { YearStudy } from '../yearStudy';
import { Rounding } from '../stages/Rounding';
import { createPaidStaff, createWorkHours } from '../work/workHours';
import { WorkWeek } from '../work/WorkWeek';
import { Year } from './Year';

interface YearAndWorkProps extends ScreenProps {
  readonly planSchedule: PlanSchedule;
  /** Name of the plan. */
  readonly name: string;
  readonly worked: YearStudy;
  /** Faults that are shown above. */
  readonly known: readonly Problem[];
}

/** What whole boards cost, a year on them, and a week's work. */
export function YearAndWork(props: YearAndWorkProps): JSX.Element {
  const times = createWorkHours(props);
  const paid = createPaidStaff(props);
  const grows = (): boolean => props.worked.year.batches.length > 0;
  return (
    <>
      <Show when={props.worked.loss}>
        {(loss) => (
          <>
            <Rounding
              loss={loss()}
              suggested={props.worked.suggested}
              planSchedule={props.worked.planSchedule}
              store={props.store}
              plan={props.plan}
              goTo={props.goTo}
            />
            <MethodLink choice={props.choice} entry="whole boards" />
          </>
        )}
      </Show>
      <Show when={grows() || props.known.length === 0}>
        <Year
          year={props.worked.year}
          boards={props.worked.planSchedule.schedule.boards.toNumber()}
          cells={props.planSchedule.cells}
          values={props.store.values()[props.plan]}
          names={props.planSchedule.names}
          known={props.known}
          steps={times.steps()}
          staff={paid.staff()}
          goTo={props.goTo}
          setStart={(day) => props.choice.set(yearStartSetting, day)}>
          {paid.view()}
        </Year>
        <MethodLink choice={props.choice} entry="calendar" />
      </Show>
      <Show when={grows()}>
        <WorkWeek
          year={props.worked.year}
          steps={times.steps()}
          from={props.choice.get(workWeekSetting)}
          setFrom={(day) => props.choice.set(workWeekSetting, day)}
          file={props.store.origin().name}
          plan={props.name}
          names={props.planSchedule.names}>
          {times.view()}
        </WorkWeek>
        <MethodLink choice={props.choice} entry="hours" />
      </Show>
    </>
  );
}
