import { createMemo, Match, Show, Switch, type JSX } from 'solid-js';
import type { Cell } from '../../model/cell';
import { AskingHead } from '../finding/AskingHead';
import { CannotCompute } from '../finding/CannotCompute';
import { errorIn, questionOf } from '../finding/comparing';
import { lookedAt, ofWhat, type Looked } from '../finding/looked';
import { Switching } from '../howSure/Switching';
import { HowWorked } from '../method/HowWorked';
import type { ScreenProps } from '../screen';
import { SideBySide } from '../sideBySide/SideBySide';
import { DriversBeside } from './DriversBeside';
import type { Asked } from './finding';
import { createTornado } from './shownTornado';
import { Spider } from './Spider';
import { TornadoView } from './TornadoView';
import '../finding/finding.css';
import './whatMatters.css';

/** What matters: how far each uncertain entry, by itself, moves a result. */
export function WhatMatters(props: ScreenProps): JSX.Element {
  return (
    <section class="question-screen what-matters" aria-labelledby="what-matters">
      <h2 class="heard" id="what-matters">What matters</h2>
      <AskingHead {...props} label="What moves">
        {(result) => <Answer {...props} result={result()} />}
      </AskingHead>
      <SideBySide {...props} />
    </section>
  );
}

function plansOf({ plan, less }: Looked): number[] {
  return less === undefined ? [plan] : [plan, less];
}

function Answer(props: ScreenProps & { result: Cell }): JSX.Element {
  const looked = createMemo(() => lookedAt(props.choice.whose(), props.plan, props.against));
  const error = createMemo(() => errorIn(props.live, props.result, plansOf(looked())));
  const question = createMemo(() => {
    const { plan, less } = looked();
    return error() === undefined ? questionOf(props.live, props.result, plan, less) : undefined;
  });
  const tornado = createTornado(() => question());
  const asked = createMemo((): Asked | undefined => {
    const base = question()?.base;
    return base && { result: props.result, of: ofWhat(props.live.model(), looked()), base };
  });
  return (
    <Switch>
      <Match when={error()}>
        {(reason) => (
          <CannotCompute result={props.result} error={reason()} cells={props.live.model().cells} goTo={props.goTo} />
        )}
      </Match>
      <Match when={asked()}>
        {(known) => (
          <>
            <TornadoView tornado={tornado()} asked={known()} letter={looked().letter || undefined} goTo={props.goTo} />
            <HowWorked choice={props.choice} entry="tornado" />
            <Show when={tornado().share < 1 || tornado().bars.length > 0}>
              <DriversBeside {...props} result={props.result} looked={looked()} bars={tornado().bars} />
              <Spider question={question()!} asked={known()} goTo={props.goTo}
                bars={tornado().share === 1 ? tornado().bars : undefined} choice={props.choice} />
            </Show>
            <Switching live={props.live} choice={props.choice} result={props.result} goTo={props.goTo}
              plans={[looked().plan, looked().less]} />
          </>
        )}
      </Match>
    </Switch>
  );
}
