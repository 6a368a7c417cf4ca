import { createMemo, Show, type JSX } from 'solid-js';
import type { Cell } from '../../model/cell';
import type { Model, Plan } from '../../model/model';
import { question } from '../../model/response';
import type { Values } from '../../model/values';
import { lever } from '../../model/view';
import { chosen, inputs } from '../finding/askable';
import { Chooser } from '../finding/Chooser';
import { createSight } from '../finding/sight';
import { HowWorked } from '../method/HowWorked';
import type { ScreenProps } from '../screen';
import { createWork } from '../finding/betterAnswers';
import { candidates, chosenOnes } from './candidates';
import { sideLines, type SideAsk, type SideLines } from './lines';
import { SideView } from './SideView';
import { Which } from './Which';
import '../finding/part.css';
import './sideBySide.css';

const key = 'side by side';

/** Several results of one unit against any input, such as the cost of a plant by plug; nothing without two of them. */
export function SideBySide(props: ScreenProps): JSX.Element {
  const planIndex = (): number => (props.choice.whose() === 'against' ? (props.against ?? props.plan) : props.plan);
  const all = createMemo(() => {
    const plan = props.live.shape().plans[planIndex()];
    return plan === undefined ? [] : candidates(props.live.shape(), plan);
  });
  return (
    <Show when={all().length > 1}>
      <Asking {...props} planIndex={planIndex()} all={all()} />
    </Show>
  );
}

interface AskingProps extends ScreenProps {
  readonly planIndex: number;
  readonly all: readonly Cell[];
}

function Asking(props: AskingProps): JSX.Element {
  let section: HTMLElement | undefined;
  const inSight = createSight(() => section);
  const ones = createMemo(() => chosenOnes(props.all, props.choice.setting(key)));
  const groups = createMemo(() => {
    const plan = props.live.shape().plans[props.planIndex];
    return plan === undefined ? [] : inputs(props.live.shape(), plan);
  });
  const input = createMemo(() => chosen(groups(), props.choice.input()));
  const ask = createMemo(() => {
    const [model, values] = [props.live.model(), props.live.values()[props.planIndex]];
    const wanted = { model, values, plan: model.plans[props.planIndex], ones: ones(), input: input()?.id };
    // What nobody looks at is not even made ready.
    return () => askOf(wanted);
  });
  const worked = createWork(() => ask(), inSight, (wanted) => answers(wanted()));
  const several = (): string => (props.live.shape().plans.length > 1 ? (props.live.shape().plans[props.planIndex]?.name ?? '') : '');
  return (
    <section class="part side-by-side" aria-labelledby="side-by-side" ref={section}>
      <h3 id="side-by-side">Side by side</h3>
      <Which all={props.all} chosen={ones()}
        choose={(wanted) => props.choice.setSetting(key, wanted.map(({ name }) => name).join(' '))} />
      <Show when={input()}>
        {(moved) => (
          <Chooser label="as this moves" groups={groups()} chosen={moved().name}
            choose={(name) => props.choice.setInput(name)} />
        )}
      </Show>
      <Show when={worked()?.found} fallback={<p class="quiet wait" role="status">Working out the lines …</p>}>
        {(known) => <SideView ask={known().side} found={known().lines} plan={several()} goTo={props.goTo} />}
      </Show>
      <HowWorked choice={props.choice} entry="side by side" />
    </section>
  );
}

interface Wanted {
  readonly model: Model;
  readonly plan: Plan | undefined;
  readonly values: Values | undefined;
  readonly ones: readonly Cell[];
  readonly input: number | undefined;
}

function askOf({ model, plan, values, ones, input }: Wanted): SideAsk | undefined {
  if (plan === undefined || values === undefined || input === undefined) return undefined;
  const moved = lever({ model, result: ones[0]?.id ?? 0, plan, against: undefined }, input);
  if (moved === undefined) return undefined;
  const results = ones.map(({ id }) => ({
    cell: model.cells[id]!,
    response: question({ model, result: id, plan, against: undefined }, values, undefined).response([moved]),
  }));
  return { lever: moved, results };
}

/** Lines with what was asked for. */
interface Answer {
  readonly side: SideAsk;
  readonly lines: SideLines;
}

function* answers(side: SideAsk | undefined): Generator<Answer | undefined, void> {
  if (side === undefined) return;
  for (const lines of sideLines(side)) yield lines && { side, lines };
}
