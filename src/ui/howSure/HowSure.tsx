import { createMemo, Match, Switch, type JSX } from 'solid-js';
import type { Cell } from '../../model/cell';
import { AskingHead } from '../finding/AskingHead';
import { CannotCompute } from '../finding/CannotCompute';
import { errorIn, questionOf } from '../finding/comparing';
import { lookedAt } from '../finding/looked';
import { here } from '../here';
import { HowWorked } from '../method/HowWorked';
import type { ScreenProps } from '../screen';
import { Draws } from './Draws';
import { todayTold } from './todayTold';
import '../finding/finding.css';
import '../breakeven/breakeven.css';
import './howSure.css';

/** How sure: a result drawn many times from all ranges at once, what drives its spread, and what is worth measuring. */
export function HowSure(props: ScreenProps): JSX.Element {
  return (
    <section class="question-screen how-sure" aria-labelledby="how-sure">
      <h2 class="heard" id="how-sure">How sure</h2>
      <AskingHead {...props} label="How sure is">
        {(result) => <Answer {...props} result={result()} />}
      </AskingHead>
      <HowWorked choice={props.choice} entry="draws" />
    </section>
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
  const question = createMemo(() => {
    const { plan, less } = looked();
    return error() === undefined ? questionOf(props.live, props.result, plan, less) : undefined;
  });
  return (
    <Switch>
      <Match when={error()}>
        {(reason) => (
          <CannotCompute result={props.result} error={reason()} cells={props.live.model().cells} goTo={props.goTo} />
        )}
      </Match>
      <Match when={question()}>
        {(known) => (
          <Draws {...props} result={props.result} looked={looked()} today={known().base.toNumber()}
            remark={todayTold(known(), here)} />
        )}
      </Match>
    </Switch>
  );
}
