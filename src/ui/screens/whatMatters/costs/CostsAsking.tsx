import { createMemo, Show, type Accessor, type JSX } from 'solid-js';
import type { Cell } from '../../../../model/cell';
import type { Model, Plan } from '../../../../model/model';
import { Waiting } from '../../../kit/sections/Waiting';
import { question } from '../../../../model/response';
import type { Values } from '../../../../model/values';
import { lever } from '../../../../model/view';
import { chosenEntry, quantityGroups } from '../../../../present/results/entryGroups';
import { createProgressive } from '../../../kit/background/progressive';
import { EntryChooser } from '../../../kit/choosers/EntryChooser';
import { createInputAsked } from '../../../kit/choosers/inputAsked';
import { MethodLink } from '../../../kit/method/MethodLink';
import { sideBySideSetting } from '../../../app/preferences/settings/whatMatters';
import type { ScreenProps } from '../../../app/screenProps';
import { chosenOnes } from '../../../../present/whatMatters/costs/candidates';
import { costsLines, type CostsRequest, type CostsLines } from '../../../../present/whatMatters/costs/lines';
import { CostsView } from './CostsView';
import { CostsPicker } from './CostsPicker';
import { costsTexts } from '../../../../present/whatMatters/costs/texts';
import { commonTexts } from '../../../../present/text/commonTexts';
import './styles.css';

interface SideAskingProps extends ScreenProps {
  readonly planIndex: number;
  readonly all: readonly Cell[];
  readonly inSight: Accessor<boolean>;
}

/** The choice of results and of the input, and the answer. */
export function CostsAsking(props: SideAskingProps): JSX.Element {
  const ones = createMemo(() => chosenOnes(props.all, props.choice.get(sideBySideSetting)));
  const groups = createMemo(() => {
    const plan = props.store.shape().plans[props.planIndex];
    return plan === undefined ? [] : quantityGroups(props.store.shape(), plan);
  });
  const asked = createInputAsked(props);
  const input = createMemo(() => chosenEntry(groups(), asked()));
  const ask = createMemo(() => {
    const [model, values] = [props.store.model(), props.store.values()[props.planIndex]];
    const wanted = { model, values, plan: model.plans[props.planIndex], ones: ones(), input: input()?.id };
    // While out of sight, the question is not even prepared.
    return () => askOf(wanted);
  });
  const worked = createProgressive(
    () => ask(),
    () => props.inSight(),
    (wanted) => answers(wanted()),
  );
  const several = (): string =>
    props.store.shape().plans.length > 1 ? (props.store.shape().plans[props.planIndex]?.name ?? '') : '';
  return (
    <>
      <CostsPicker
        all={props.all}
        chosen={ones()}
        choose={(wanted) =>
          props.choice.set(
            sideBySideSetting,
            wanted.map(({ name }) => name),
          )
        }
      />
      <Show when={input()}>
        {(moved) => (
          <EntryChooser
            label={costsTexts.moves}
            groups={groups()}
            chosen={moved().name}
            choose={(name) => props.choice.setInput(name)}
          />
        )}
      </Show>
      <Show when={worked()?.found} fallback={<Waiting class="quiet wait">{commonTexts.workingLines}</Waiting>}>
        {(known) => <CostsView ask={known().side} found={known().lines} plan={several()} goTo={props.goTo} />}
      </Show>
      <MethodLink choice={props.choice} entry="side by side" />
    </>
  );
}

interface Wanted {
  readonly model: Model;
  readonly plan: Plan | undefined;
  readonly values: Values | undefined;
  readonly ones: readonly Cell[];
  readonly input: number | undefined;
}

function askOf({ model, plan, values, ones, input }: Wanted): CostsRequest | undefined {
  if (plan === undefined || values === undefined || input === undefined) return undefined;
  const moved = lever({ model, result: ones[0]?.id ?? 0, plan, against: undefined }, input);
  if (moved === undefined) return undefined;
  const results = ones.map(({ id }) => ({
    cell: model.cells[id]!,
    response: question({ model, result: id, plan, against: undefined }, values, undefined).response([moved]),
  }));
  return { lever: moved, results };
}

/** Lines with the question that they answer. */
interface Answer {
  readonly side: CostsRequest;
  readonly lines: CostsLines;
}

function* answers(side: CostsRequest | undefined): Generator<Answer | undefined, void> {
  if (side === undefined) return;
  for (const lines of costsLines(side)) yield lines && { side, lines };
}
