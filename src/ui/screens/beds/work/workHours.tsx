import { createMemo, type Accessor, type JSX } from 'solid-js';
import type { Values } from '../../../../model/values';
import type { Staff, WorkStep } from '../../../../trade/labour';
import { beyondHoursSetting, countedAtSetting, staffHoursSetting } from '../../../app/preferences/settings/beds';
import type { ScreenProps } from '../../../app/screenProps';
import type { PlanSchedule } from '../../../../present/beds/planSchedule';
import { hoursEntries, isChosen, staffChoice, staffOf, type StaffPart } from '../../../../present/beds/work/staffHours';
import { WhoIsPaid } from './WhoIsPaid';
import { WorkTimes } from './WorkTimes';
import {
  stepAllowance,
  countedOptions,
  timeEntries,
  usualTimes,
  workSteps,
  type CountedAt,
} from '../../../../present/beds/work/stepTimes';

interface HoursProps extends ScreenProps {
  readonly planSchedule: PlanSchedule;
}

/** The steps of the work, with the entries chosen for them. */
export interface WorkHours {
  readonly steps: Accessor<readonly WorkStep[]>;
  readonly view: () => JSX.Element;
}

/** The staff; undefined where no entry is chosen for its hours. */
export interface PaidStaff {
  readonly staff: Accessor<Staff | undefined>;
  readonly view: () => JSX.Element;
}

function valuesOf({ store, plan }: ScreenProps): Values | undefined {
  return store.values()[plan];
}

/** Whether an edit elsewhere left these numbers unchanged, so that the weeks need not be computed again. */
function sameNumbers(a: unknown, b: unknown): boolean {
  return JSON.stringify(a) === JSON.stringify(b);
}

export function createWorkHours(props: HoursProps): WorkHours {
  const cells = (): PlanSchedule['cells'] => props.planSchedule.cells;
  const entries = createMemo(() => timeEntries(cells(), props.planSchedule.parts.get('boards')));
  const at = createMemo((): CountedAt[] => {
    const usual = usualTimes(entries(), props.planSchedule.schedule.stages.length);
    const known = countedOptions(props.planSchedule.names).map(({ value }) => value);
    return entries().map(({ cell }, i) => {
      const chosen = props.choice.get(countedAtSetting(cell.name));
      return known.find((value) => value === chosen) ?? usual[i] ?? 'none';
    });
  });
  const steps = createMemo(
    () => {
      const values = valuesOf(props);
      return values === undefined ? [] : workSteps(entries(), at(), stepAllowance(cells()), values);
    },
    [],
    { equals: sameNumbers },
  );
  const view = (): JSX.Element => (
    <WorkTimes
      entries={entries()}
      at={at()}
      names={props.planSchedule.names}
      allowance={stepAllowance(cells())}
      values={valuesOf(props)}
      choose={({ cell }, chosen) => {
        const setting = countedAtSetting(cell.name);
        props.choice.set(setting, setting.read(chosen));
      }}
    />
  );
  return { steps, view };
}

export function createPaidStaff(props: HoursProps): PaidStaff {
  const entries = createMemo(() => {
    const plan = props.store.shape().plans[props.plan];
    return plan === undefined ? [] : hoursEntries(props.planSchedule.cells, plan);
  });
  const chosen = (part: StaffPart): string => props.choice.get(staffHoursSetting(part));
  const choice = createMemo(() => staffChoice(entries(), chosen));
  const beyond = (): Staff['beyond'] => props.choice.get(beyondHoursSetting);
  const staff = createMemo(
    () => {
      const values = valuesOf(props);
      if (values === undefined || !isChosen(choice())) return undefined;
      return staffOf(entries(), choice(), beyond(), values);
    },
    undefined,
    { equals: sameNumbers },
  );
  const view = (): JSX.Element => (
    <WhoIsPaid
      entries={entries()}
      choice={choice()}
      beyond={beyond()}
      values={valuesOf(props)}
      choose={(part, name) => props.choice.set(staffHoursSetting(part), name)}
      chooseBeyond={(cover) => props.choice.set(beyondHoursSetting, beyondHoursSetting.read(cover))}
    />
  );
  return { staff, view };
}
