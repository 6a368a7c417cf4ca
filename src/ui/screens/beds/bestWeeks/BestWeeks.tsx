import { createMemo, on, Show, type Accessor, type JSX } from 'solid-js';
import type { Cell } from '../../../../model/cell';
import type { Model } from '../../../../model/model';
import type { View } from '../../../../model/view';
import type { Way } from '../../../../study/best';
import { Waiting } from '../../../kit/sections/Waiting';
import { subjectOf } from '../../../../present/breakeven/sentences';
import { chosenEntry, resultGroups } from '../../../../present/results/entryGroups';
import { createProgressive } from '../../../kit/background/progressive';
import { createSight } from '../../../kit/sections/sight';
import { MethodLink } from '../../../kit/method/MethodLink';
import {
  bestDensitySetting,
  bestStageSetting,
  bestTimeSetting,
  bestWaySetting,
  heldTimeSetting,
} from '../../../app/preferences/settings/bestWeeks';
import type { ScreenProps } from '../../../app/screenProps';
import type { PlanSchedule } from '../../../../present/beds/planSchedule';
import { BestAnswer } from './BestAnswer';
import {
  bestWeeksRequest,
  chosenOf,
  stageOptions,
  usualWay,
  type BestWeeksRequest,
  type Chosen,
  type StageOption,
} from '../../../../present/beds/bestWeeks/options';
import { BestChoices } from './BestChoices';
import { searchBestWeeks } from '../../../../present/beds/bestWeeks/search';
import type { BestWeeksContext } from '../../../../present/beds/bestWeeks/sentences';
import { bestWeeksTexts } from '../../../../present/beds/bestWeeks/texts';
import '../../../kit/heat/twoWay.css';

export interface BestWeeksProps extends ScreenProps {
  /** The schedule of the plan. */
  readonly planSchedule: PlanSchedule;
}

/** A question with the texts about it. */
interface Request {
  /** The model's shape (see ModelStore): an answer about another shape is not shown. */
  readonly shape: Model;
  readonly make: () => BestWeeksRequest | undefined;
  readonly speech: BestWeeksContext;
}

/** Best weeks: a result over the time and the density of an early stage; nothing where there is no such stage. */
export function BestWeeks(props: BestWeeksProps): JSX.Element {
  // A difference can be shown only for the plan, and not for the plan compared with.
  const canCompare = (): boolean => props.against !== undefined && props.against !== props.plan;
  const against = (): number | undefined =>
    canCompare() && props.choice.whose() === 'difference' ? props.against : undefined;
  const groups = createMemo(() => resultGroups(props.store.shape(), [props.plan]));
  const result = createMemo(() => chosenEntry(groups(), props.choice.result()));
  // The options depend on the schedule alone; other numbers do not change them.
  const options = createMemo(
    on(
      () => [props.planSchedule, props.plan, result(), against()] as const,
      ([, plan, cell, other]): readonly StageOption[] => {
        const [view, values] = [viewOf(props, cell, other), props.store.values()[plan]];
        return view === undefined || values === undefined ? [] : stageOptions(view, values);
      },
    ),
    [],
    { equals: sameOptions },
  );
  const picked = createMemo(() =>
    chosenOf(options(), {
      stage: props.choice.get(bestStageSetting),
      time: props.choice.get(bestTimeSetting),
      density: props.choice.get(bestDensitySetting),
      held: props.choice.get(heldTimeSetting),
    }),
  );
  const both = createMemo((): readonly [Cell, Chosen] | undefined => {
    const [cell, one] = [result(), picked()];
    return cell && one && [cell, one];
  });
  return (
    <Show when={both()}>
      {(planSchedule) => (
        <Asking
          {...props}
          less={against()}
          result={planSchedule()[0]}
          picked={planSchedule()[1]}
          groups={groups()}
          options={options()}
          canCompare={canCompare()}
        />
      )}
    </Show>
  );
}

function viewOf(props: ScreenProps, result: Cell | undefined, against: number | undefined): View | undefined {
  const model = props.store.model();
  const plan = model.plans[props.plan];
  if (result === undefined || plan === undefined) return undefined;
  return { model, result: result.id, plan, against: against === undefined ? undefined : model.plans[against] };
}

function sameOptions(a: readonly StageOption[], b: readonly StageOption[]): boolean {
  const text = (options: readonly StageOption[]): string =>
    JSON.stringify(
      options.map(({ stage, times, densities }) => [
        stage,
        times.map(({ cell, canHoldTotal }) => [cell.name, canHoldTotal]),
        densities.map(({ name }) => name),
      ]),
    );
  return text(a) === text(b);
}

interface AskingProps extends BestWeeksProps {
  readonly result: Cell;
  readonly picked: Chosen;
  readonly groups: ReturnType<typeof resultGroups>;
  readonly options: readonly StageOption[];
  /** Index of the plan that is subtracted; undefined for none. */
  readonly less: number | undefined;
  readonly canCompare: boolean;
}

function Asking(props: AskingProps): JSX.Element {
  let section: HTMLElement | undefined;
  const inSight = createSight(() => section);
  const way: Accessor<Way> = () => props.choice.get(bestWaySetting(props.result.name)) ?? usualWay(props.result);
  const request = createMemo(() => requestOf(props, way()));
  const worked = createProgressive(
    () => request(),
    inSight,
    ({ make }) => searchBestWeeks(make()),
  );
  const answer = (): ReturnType<typeof worked> => (worked()?.of.shape === props.store.shape() ? worked() : undefined);
  return (
    <section class="best-weeks two-way" aria-labelledby="best-weeks" ref={section}>
      <h3 id="best-weeks">{bestWeeksTexts.heading}</h3>
      <BestChoices
        choice={props.choice}
        groups={props.groups}
        result={props.result}
        options={props.options}
        picked={props.picked}
        way={way()}
        names={props.planSchedule.names}
        canCompare={props.canCompare}
        isCompared={props.less !== undefined}
        plan={props.store.shape().plans[props.plan]?.name ?? ''}
      />
      <Show when={answer()} fallback={<Waiting class="heat-wait">{bestWeeksTexts.looking}</Waiting>}>
        {(found) => <BestAnswer result={found().found} speech={found().of.speech} />}
      </Show>
      <MethodLink choice={props.choice} entry="best weeks" />
    </section>
  );
}

function requestOf(props: AskingProps, way: Way): Request {
  const {
    result,
    picked,
    planSchedule: { names },
  } = props;
  const [view, values] = [viewOf(props, result, props.less), props.store.values()];
  const [own, other] = [values[props.plan], values[props.less ?? -1]];
  const subject = subjectOf({ subject: { result }, view: props.less === undefined ? 'alone' : 'difference' });
  return {
    shape: props.store.shape(),
    make: () => (view === undefined || own === undefined ? undefined : bestWeeksRequest(view, own, other, picked, way)),
    speech: { result, subject, names },
  };
}
