import { createMemo, on, Show, type Accessor, type JSX } from 'solid-js';
import type { Cell } from '../../model/cell';
import type { Model } from '../../model/model';
import type { View } from '../../model/view';
import type { Way } from '../../study/best';
import { subjectOf } from '../breakeven/told';
import { chosen, results } from '../finding/askable';
import { createWork } from '../finding/betterAnswers';
import { createSight } from '../finding/sight';
import { HowWorked } from '../method/HowWorked';
import type { ScreenProps } from '../screen';
import type { Asked } from './asked';
import { BestAnswer } from './BestAnswer';
import { bestAsk, chosenOf, stageOptions, usualWay, type BestAsk, type Chosen, type StageOption } from './bestWeeksAsk';
import { BestChoices } from './BestChoices';
import { lookForBest } from './bestWeeksLook';
import type { BestSpeech } from './bestWeeksTold';
import '../twoWay/twoWay.css';

export interface BestWeeksProps extends ScreenProps {
  /** The schedule of the plan looked at. */
  readonly asked: Asked;
}

/** A request with what is said of it. */
interface Request {
  /** The model as to everything but its numbers: of another one no answer stays in sight. */
  readonly shape: Model;
  readonly make: () => BestAsk | undefined;
  readonly speech: BestSpeech;
}

/** Best weeks: a result against the time and the density of an early stage; nothing where there is no such stage. */
export function BestWeeks(props: BestWeeksProps): JSX.Element {
  // Only the second of the plans compared is looked at less the other.
  const canCompare = (): boolean => props.against !== undefined && props.against !== props.plan;
  const against = (): number | undefined =>
    canCompare() && props.choice.whose() === 'difference' ? props.against : undefined;
  const groups = createMemo(() => results(props.live.shape(), [props.plan]));
  const result = createMemo(() => chosen(groups(), props.choice.result()));
  // What can be moved hangs on the schedule: other numbers change nothing in it.
  const options = createMemo(
    on(
      () => [props.asked, props.plan, result(), against()] as const,
      ([, plan, cell, other]): readonly StageOption[] => {
        const [view, values] = [viewOf(props, cell, other), props.live.values()[plan]];
        return view === undefined || values === undefined ? [] : stageOptions(view, values);
      },
    ),
    [],
    { equals: sameOptions },
  );
  const picked = createMemo(() =>
    chosenOf(options(), {
      stage: props.choice.setting('best stage'),
      time: props.choice.setting('best time'),
      density: props.choice.setting('best density'),
      held: props.choice.setting('best held'),
    }),
  );
  const both = createMemo((): readonly [Cell, Chosen] | undefined => {
    const [cell, one] = [result(), picked()];
    return cell && one && [cell, one];
  });
  return (
    <Show when={both()}>
      {(asked) => (
        <Asking
          {...props}
          less={against()}
          result={asked()[0]}
          picked={asked()[1]}
          groups={groups()}
          options={options()}
          canCompare={canCompare()}
        />
      )}
    </Show>
  );
}

function viewOf(props: ScreenProps, result: Cell | undefined, against: number | undefined): View | undefined {
  const model = props.live.model();
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
  readonly groups: ReturnType<typeof results>;
  readonly options: readonly StageOption[];
  /** The plan that it is looked at less. */
  readonly less: number | undefined;
  readonly canCompare: boolean;
}

function Asking(props: AskingProps): JSX.Element {
  let section: HTMLElement | undefined;
  const inSight = createSight(() => section);
  const way: Accessor<Way> = () => {
    const kept = props.choice.setting(`best way ${props.result.name}`);
    return kept === 'highest' || kept === 'lowest' ? kept : usualWay(props.result);
  };
  const request = createMemo(() => requestOf(props, way()));
  const worked = createWork(
    () => request(),
    inSight,
    ({ make }) => lookForBest(make()),
  );
  const answer = (): ReturnType<typeof worked> => (worked()?.of.shape === props.live.shape() ? worked() : undefined);
  return (
    <section class="best-weeks two-way" aria-labelledby="best-weeks" ref={section}>
      <h3 id="best-weeks">Best weeks</h3>
      <BestChoices
        choice={props.choice}
        groups={props.groups}
        result={props.result}
        options={props.options}
        picked={props.picked}
        way={way()}
        names={props.asked.names}
        canCompare={props.canCompare}
        isCompared={props.less !== undefined}
        plan={props.live.shape().plans[props.plan]?.name ?? ''}
      />
      <Show
        when={answer()}
        fallback={
          <p class="heat-wait" role="status">
            Looking for the best weeks …
          </p>
        }>
        {(found) => <BestAnswer look={found().found} speech={found().of.speech} file={props.live.origin().name} />}
      </Show>
      <HowWorked choice={props.choice} entry="best weeks" />
    </section>
  );
}

function requestOf(props: AskingProps, way: Way): Request {
  const {
    result,
    picked,
    asked: { names },
  } = props;
  const [view, values] = [viewOf(props, result, props.less), props.live.values()];
  const [own, other] = [values[props.plan], values[props.less ?? -1]];
  const subject = subjectOf({ asked: { result }, view: props.less === undefined ? 'alone' : 'difference' });
  return {
    shape: props.live.shape(),
    make: () => (view === undefined || own === undefined ? undefined : bestAsk(view, own, other, picked, way)),
    speech: { result, subject, names },
  };
}
