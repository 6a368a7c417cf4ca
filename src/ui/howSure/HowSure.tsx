import { createMemo, Match, Show, Switch, type JSX } from 'solid-js';
import type { Cell } from '../../model/cell';
import { chosen, results } from '../finding/askable';
import { CannotCompute } from '../finding/CannotCompute';
import { Choices } from '../finding/Choices';
import { Chooser } from '../finding/Chooser';
import { errorIn, questionOf } from '../finding/comparing';
import type { ScreenProps } from '../screen';
import { Draws } from './Draws';
import { Method } from './Method';
import { lookedAt, whoseOptions } from './subject';
import '../finding/finding.css';
import '../breakeven/breakeven.css';
import './howSure.css';

/** How sure: a result drawn many times from all ranges at once, what drives its spread, and what is worth measuring. */
export function HowSure(props: ScreenProps): JSX.Element {
  const plans = createMemo(() => [props.plan, ...(props.against === undefined ? [] : [props.against])]);
  const groups = createMemo(() => results(props.live.model(), plans()));
  const result = createMemo(() => chosen(groups(), props.choice.result()));
  return (
    <section class="question-screen how-sure" aria-labelledby="how-sure">
      <h2 class="heard" id="how-sure">How sure</h2>
      <Show when={result()} fallback={<NothingToAsk />}>
        {(cell) => (
          <>
            <div class="asking">
              <Chooser label="How sure is" groups={groups()} chosen={cell().name} choose={(name) => props.choice.setResult(name)} />
              <Show when={props.against !== undefined}>
                <Choices legend="in" options={whoseOptions(props.live.model(), props.plan, props.against!)}
                  chosen={props.choice.whose()} choose={(whose) => props.choice.setWhose(whose)} />
              </Show>
            </div>
            <Answer {...props} result={cell()} />
          </>
        )}
      </Show>
      <Method />
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
  const looked = createMemo(() => lookedAt(props.choice.whose(), props.plan, props.against), undefined, {
    equals: (a, b) => a.plan === b.plan && a.less === b.less && a.beside === b.beside,
  });
  const error = createMemo(() => {
    const { plan, less } = looked();
    return errorIn(props.live, props.result, less === undefined ? [plan] : [plan, less]);
  });
  const today = createMemo(() => {
    const { plan, less } = looked();
    return error() === undefined ? questionOf(props.live, props.result, plan, less)?.base.toNumber() : undefined;
  });
  return (
    <Switch>
      <Match when={error()}>
        {(reason) => (
          <CannotCompute result={props.result} error={reason()} cells={props.live.model().cells} goTo={props.goTo} />
        )}
      </Match>
      <Match when={today() !== undefined}>
        <Draws {...props} result={props.result} looked={looked()} today={today()!} />
      </Match>
    </Switch>
  );
}
