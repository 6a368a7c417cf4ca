import { createMemo, Match, Show, Switch, type JSX } from 'solid-js';
import type { Cell } from '../../model/cell';
import type { Model } from '../../model/model';
import { chosen, results } from '../finding/askable';
import { CannotCompute } from '../finding/CannotCompute';
import { Choices, type Option } from '../finding/Choices';
import { Chooser } from '../finding/Chooser';
import { errorIn, questionOf } from '../finding/comparing';
import { Switching } from '../howSure/Switching';
import type { ScreenProps, Whose } from '../screen';
import type { Of } from './finding';
import { createTornado } from './shownTornado';
import { TornadoView } from './TornadoView';
import '../finding/finding.css';
import './whatMatters.css';

/** The plans whose values a choice looks at: the plan, and the one that it is less. */
function plansOf(
  whose: Whose, plan: number, against: number | undefined,
): readonly [plan: number, less: number | undefined] {
  if (against === undefined || whose === 'plan') return [plan, undefined];
  return whose === 'against' ? [against, undefined] : [plan, against];
}

function nameOf({ plans }: Model, plan: number): string {
  return plans[plan]?.name ?? '';
}

function ofWhat(model: Model, [plan, less]: readonly [number, number | undefined]): Of {
  const name = nameOf(model, plan);
  if (less !== undefined) return { kind: 'difference', plan: name, against: nameOf(model, less) };
  return { kind: 'plan', plan: name, alone: model.plans.length === 1 };
}

function whoseOptions(model: Model, plan: number, against: number): Option<Whose>[] {
  return [
    { value: 'difference', label: 'difference B − A' },
    { value: 'against', label: `A ${nameOf(model, against)}` },
    { value: 'plan', label: `B ${nameOf(model, plan)}` },
  ];
}

/** What matters: how far each uncertain entry, by itself, moves a result. */
export function WhatMatters(props: ScreenProps): JSX.Element {
  const looked = createMemo(() => [props.plan, ...(props.against === undefined ? [] : [props.against])]);
  const groups = createMemo(() => results(props.live.shape(), looked()));
  const result = createMemo(() => chosen(groups(), props.choice.result()));
  const whose = createMemo(() => (
    props.against === undefined ? [] : whoseOptions(props.live.shape(), props.plan, props.against)
  ));
  return (
    <section class="question-screen what-matters" aria-labelledby="what-matters">
      <h2 class="heard" id="what-matters">What matters</h2>
      <Show when={result()} fallback={<NothingToAsk />}>
        {(cell) => (
          <>
            <div class="asking">
              <Chooser label="What moves" groups={groups()} chosen={cell().name} choose={(name) => props.choice.setResult(name)} />
              <Show when={props.against !== undefined}>
                <Choices legend="in" options={whose()}
                  chosen={props.choice.whose()} choose={(whose) => props.choice.setWhose(whose)} />
              </Show>
            </div>
            <Answer {...props} result={cell()} />
          </>
        )}
      </Show>
    </section>
  );
}

function NothingToAsk(): JSX.Element {
  return (
    <div class="empty">
      <p class="finding">There is nothing to ask about yet.</p>
      <p>An entry that is calculated from others will be listed here: give one a formula.</p>
    </div>
  );
}

function Answer(props: ScreenProps & { result: Cell }): JSX.Element {
  const plans = createMemo(() => plansOf(props.choice.whose(), props.plan, props.against));
  const error = createMemo(() => errorIn(props.live, props.result, plans().filter((plan) => plan !== undefined)));
  const question = createMemo(() => {
    const [plan, less] = plans();
    return error() === undefined ? questionOf(props.live, props.result, plan, less) : undefined;
  });
  const tornado = createTornado(() => question());
  return (
    <Switch>
      <Match when={error()}>
        {(reason) => (
          <CannotCompute result={props.result} error={reason()} cells={props.live.model().cells} goTo={props.goTo} />
        )}
      </Match>
      <Match when={question()}>
        {(asked) => (
          <>
            <TornadoView
              tornado={tornado()}
              asked={{ result: props.result, of: ofWhat(props.live.model(), plans()), base: asked().base }}
              letter={plans()[1] !== undefined ? undefined : plans()[0] === props.plan ? 'B' : 'A'}
              goTo={props.goTo}
            />
            <Switching live={props.live} result={props.result} plans={plans()} goTo={props.goTo} />
          </>
        )}
      </Match>
    </Switch>
  );
}
