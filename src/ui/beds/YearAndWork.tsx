import { Show, type JSX } from 'solid-js';
import type { Problem } from '../../core/problem';
import { isoDate, readIsoDate } from '../../trade/civilDate';
import { HowWorked } from '../method/HowWorked';
import type { ScreenProps } from '../screen';
import type { Asked } from './asked';
import type { Later } from './later';
import { Rounding } from './Rounding';
import { createPaidStaff, createWorkHours } from './workHours';
import { WorkWeek } from './WorkWeek';
import { Year } from './Year';

interface YearAndWorkProps extends ScreenProps {
  readonly asked: Asked;
  /** Of the plan. */
  readonly name: string;
  readonly worked: Later;
  /** Faults that are told above. */
  readonly known: readonly Problem[];
  readonly beforePrint: () => void;
}

/** What whole boards cost, the year on them, and the work of a week. */
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
              asked={props.worked.asked}
              live={props.live}
              plan={props.plan}
              goTo={props.goTo}
            />
            <HowWorked choice={props.choice} entry="whole boards" />
          </>
        )}
      </Show>
      <Show when={grows() || props.known.length === 0}>
        <Year
          year={props.worked.year}
          boards={props.worked.asked.schedule.boards.toNumber()}
          cells={props.asked.cells}
          names={props.asked.names}
          known={props.known}
          steps={times.steps()}
          staff={paid.staff()}
          goTo={props.goTo}
          setStart={(day) => props.choice.setSetting('beds start', isoDate(day))}>
          {paid.view()}
        </Year>
        <HowWorked choice={props.choice} entry="calendar" />
      </Show>
      <Show when={grows()}>
        <WorkWeek
          year={props.worked.year}
          steps={times.steps()}
          from={readIsoDate(props.choice.setting('beds week'))}
          setFrom={(day) => props.choice.setSetting('beds week', isoDate(day))}
          file={props.live.origin().name}
          plan={props.name}
          names={props.asked.names}
          beforePrint={props.beforePrint}>
          {times.view()}
        </WorkWeek>
        <HowWorked choice={props.choice} entry="hours" />
      </Show>
    </>
  );
}
