import { createMemo, lazy, Match, Show, Switch, type JSX } from 'solid-js';
import type { Cell } from '../../model/cell';
import type { Question } from '../../model/response';
import { AskingHead } from '../finding/AskingHead';
import { CannotCompute } from '../finding/CannotCompute';
import { createAsked } from '../finding/createAsked';
import { ofWhat, type Looked } from '../finding/looked';
import { namesAmong } from '../finding/named';
import { Part } from '../finding/Part';
import { HowWorked } from '../method/HowWorked';
import type { ScreenProps } from '../screen';
import { SideBySide } from '../sideBySide/SideBySide';
import type { Asked } from './finding';
import { createTornado, type ShownTornado } from './shownTornado';
import { TornadoView } from './TornadoView';
import '../finding/finding.css';
import './whatMatters.css';

const DriversBeside = lazy(async () => ({ default: (await import('./DriversBeside')).DriversBeside }));
const Spider = lazy(async () => ({ default: (await import('./Spider')).Spider }));
const Switching = lazy(async () => ({ default: (await import('../howSure/Switching')).Switching }));

/** What matters: how far each uncertain entry, by itself, moves a result. */
export function WhatMatters(props: ScreenProps): JSX.Element {
  return (
    <section class="question-screen what-matters" aria-labelledby="what-matters">
      <h2 class="heard" id="what-matters">
        What matters
      </h2>
      <AskingHead {...props} label="What moves">
        {(result) => <Answer {...props} result={result()} />}
      </AskingHead>
      <SideBySide {...props} />
    </section>
  );
}

function Answer(props: ScreenProps & { result: Cell }): JSX.Element {
  const { looked, error, question } = createAsked(props);
  const tornado = createTornado(() => question());
  const nameOf = createMemo(() => namesAmong(props.live.shape().cells));
  const asked = createMemo((): Asked | undefined => {
    const base = question()?.base;
    return base && { result: props.result, of: ofWhat(props.live.model(), looked()), base, nameOf: nameOf() };
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
            <BesideBars {...props} asked={known()} tornado={tornado()} looked={looked()} question={question()!} />
            <Part id="switching" class="switching" heading="How wrong a guess may be">
              {(inSight) => (
                <Switching
                  live={props.live}
                  choice={props.choice}
                  result={props.result}
                  goTo={props.goTo}
                  plans={[looked().plan, looked().less]}
                  inSight={inSight}
                />
              )}
            </Part>
          </>
        )}
      </Match>
    </Switch>
  );
}

interface BesideBarsProps extends ScreenProps {
  readonly result: Cell;
  readonly asked: Asked;
  readonly tornado: ShownTornado;
  readonly looked: Looked;
  readonly question: Question;
}

/** What a bar for each entry by itself does not tell: all of them at once, and the way between the ends. */
function BesideBars(props: BesideBarsProps): JSX.Element {
  return (
    <Show when={props.tornado.share < 1 || props.tornado.bars.length > 0}>
      <Part id="drivers" heading="Which guesses drive the spread">
        {(inSight) => (
          <DriversBeside
            {...props}
            result={props.result}
            looked={props.looked}
            bars={props.tornado.bars}
            inSight={inSight}
          />
        )}
      </Part>
      <Part id="spider" heading="Per cent for per cent">
        {(inSight) => (
          <Spider
            question={props.question}
            asked={props.asked}
            goTo={props.goTo}
            inSight={inSight}
            bars={props.tornado.share === 1 ? props.tornado.bars : undefined}
            choice={props.choice}
          />
        )}
      </Part>
    </Show>
  );
}
