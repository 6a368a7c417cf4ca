import { createMemo, on, Show, type Accessor, type JSX } from 'solid-js';
import type { Cell } from '../../../../model/cell';
import type { Model, Plan } from '../../../../model/model';
import type { Question } from '../../../../model/response';
import type { SearchRange } from '../../../../study/searchRange';
import type { Targets } from '../../../../present/breakeven/curve/quickStudy';
import { claimOf, subjectOf } from '../../../../present/breakeven/sentences';
import type { LineView } from '../../../../present/breakeven/view';
import { quantityGroups, type EntryGroup } from '../../../../present/results/entryGroups';
import { createProgressive } from '../../../kit/background/progressive';
import { EntryChooser } from '../../../kit/choosers/EntryChooser';
import { resultQuestion } from '../../../app/store/resultQuestion';
import { Waiting } from '../../../kit/sections/Waiting';
import { createSight } from '../../../kit/sections/sight';
import { localFormat } from '../../../app/preferences/localFormat';
import { secondInputSetting } from '../../../app/preferences/settings/breakeven';
import { MethodLink } from '../../../kit/method/MethodLink';
import type { ScreenProps } from '../../../app/screenProps';
import { searchPair, type Pair } from '../../../../present/breakeven/twoWay/surfaces';
import { movingOf, usualSecond } from '../../../../present/breakeven/twoWay/pair';
import type { TwoWayContext } from '../../../../present/breakeven/twoWay/sentences';
import { TwoWayAnswer } from './TwoWayAnswer';
import { twoWayTexts } from '../../../../present/breakeven/twoWay/texts';
import { commonTexts } from '../../../../present/text/commonTexts';
import '../../../kit/heat/twoWay.css';

interface TwoWayProps extends ScreenProps {
  readonly result: Cell;
  /** The first input, on the horizontal axis. */
  readonly input: Cell;
  /** The range of the first input where someone has set it; undefined for the usual one. */
  readonly range: SearchRange | undefined;
  readonly view: LineView;
  readonly targets: Targets;
}

/** A question; each answer belongs to one. */
interface Asked {
  /** The model's shape (see ModelStore): an answer about another shape is not shown. */
  readonly shape: Model;
  readonly pair: () => Pair | undefined;
  readonly context: TwoWayContext;
}

/** Two-way breakeven: where a result over two inputs meets the target, as a picture, in words and as a table. */
export function TwoWay(props: TwoWayProps): JSX.Element {
  let section: HTMLElement | undefined;
  const inSight = createSight(() => section);
  const second = createSecond(props);
  const subject = createMemo(() => askedOf(props, second.chosen()));
  const worked = createProgressive(
    () => subject(),
    inSight,
    ({ pair }) => searchPair(pair()),
  );
  const answer = (): ReturnType<typeof worked> =>
    second.chosen() !== undefined && worked()?.of.shape === props.store.shape() ? worked() : undefined;
  return (
    <section class="two-way" aria-labelledby="two-way" ref={section}>
      <h3 id="two-way">{twoWayTexts.heading}</h3>
      <Show when={second.chosen()} fallback={<p>{twoWayTexts.noSecond(props.result.label)}</p>}>
        {(down) => (
          <div class="asking">
            <EntryChooser
              label={twoWayTexts.second(props.input.label)}
              groups={second.groups()}
              chosen={down().name}
              choose={(name) => props.choice.set(secondInputSetting, name)}
            />
          </div>
        )}
      </Show>
      <Show
        when={answer()}
        fallback={
          <Show when={second.chosen()}>
            <Waiting class="heat-wait">{commonTexts.working}</Waiting>
          </Show>
        }>
        {(found) => <TwoWayAnswer surfaces={found().found} context={found().of.context} />}
      </Show>
      <MethodLink choice={props.choice} entry="two at once" />
    </section>
  );
}

interface Second {
  readonly groups: Accessor<readonly EntryGroup[]>;
  readonly chosen: Accessor<Cell | undefined>;
}

/** The second input: the one someone chose, else the usual one. It does not change with the model's numbers. */
function createSecond(props: TwoWayProps): Second {
  const plan = (): Plan | undefined => props.store.shape().plans[props.plan];
  const groups = createMemo((): EntryGroup[] => {
    const all = plan();
    return (all === undefined ? [] : quantityGroups(props.store.shape(), all))
      .map(({ heading, cells }) => ({ heading, cells: cells.filter(({ id }) => id !== props.input.id) }))
      .filter(({ cells }) => cells.length > 0);
  });
  const usual = createMemo(
    on(
      () => [props.store.shape(), props.result, props.input, props.plan, props.against] as const,
      ([, result, input, own, against]) => {
        const question = resultQuestion(props.store, result, own, against);
        return question && usualSecond(question, input);
      },
    ),
  );
  const chosen = createMemo((): Cell | undefined => {
    const name = props.choice.get(secondInputSetting);
    return (
      groups()
        .flatMap(({ cells }) => cells)
        .find((cell) => cell.name === name) ?? usual()
    );
  });
  return { groups, chosen };
}

function askedOf(props: TwoWayProps, second: Cell | undefined): Asked {
  const { result, input, range, view, targets } = props;
  const [model, values] = [props.store.model(), props.store.values()];
  const [own, other] = [props.plan, view === 'alone' ? undefined : props.against];
  const planName = (plan: number | undefined): string => model.plans[plan ?? -1]?.name ?? '';
  const subject = {
    result,
    target: targets.plan,
    plan: planName(own),
    against: other === undefined ? undefined : planName(other),
  };
  return {
    shape: props.store.shape(),
    pair: () => {
      const question = resultQuestion({ model: () => model, values: () => values }, result, own, other);
      return (
        question &&
        second &&
        pairOf(question, input, second, range, targets[other === undefined ? 'plan' : 'difference'])
      );
    },
    context: { claim: claimOf({ subject, view, targets }, localFormat), subject: subjectOf({ subject, view }), result },
  };
}

function pairOf(
  question: Question,
  first: Cell,
  second: Cell,
  range: SearchRange | undefined,
  target: Pair['target'],
): Pair | undefined {
  const [across, down] = [movingOf(question, first, range), movingOf(question, second)];
  return across && down && { question, across, down, target };
}
