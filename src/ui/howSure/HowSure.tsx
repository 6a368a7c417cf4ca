import { Match, Switch, type JSX } from 'solid-js';
import type { Cell } from '../../model/cell';
import { AskingHead } from '../finding/AskingHead';
import { CannotCompute } from '../finding/CannotCompute';
import { createAsked } from '../finding/createAsked';
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
      <h2 class="heard" id="how-sure">
        How sure
      </h2>
      <AskingHead {...props} label="How sure is">
        {(result) => <Answer {...props} result={result()} />}
      </AskingHead>
      <HowWorked choice={props.choice} entry="draws" />
    </section>
  );
}

function Answer(props: ScreenProps & { result: Cell }): JSX.Element {
  const { looked, error, question } = createAsked(props);
  return (
    <Switch>
      <Match when={error()}>
        {(reason) => (
          <CannotCompute result={props.result} error={reason()} cells={props.live.model().cells} goTo={props.goTo} />
        )}
      </Match>
      <Match when={question()}>
        {(known) => (
          <Draws
            {...props}
            result={props.result}
            looked={looked()}
            today={known().base.toNumber()}
            remark={todayTold(known(), here)}
          />
        )}
      </Match>
    </Switch>
  );
}
