import { batch, createMemo, Match, Show, Switch, type JSX } from 'solid-js';
import type { Cell } from '../../model/cell';
import { chosen, inputs, results, touchedBy } from '../finding/askable';
import { CannotCompute } from '../finding/CannotCompute';
import { Chooser } from '../finding/Chooser';
import { errorIn } from '../finding/comparing';
import { named, namesAmong } from '../finding/named';
import type { ScreenProps } from '../screen';
import { BreakevenAnswer } from './BreakevenAnswer';
import { ready, type Lines } from './lines';
import { UsualQuestions } from './UsualQuestions';
import '../finding/finding.css';
import './breakeven.css';

function plansLookedAt(plan: number, against: number | undefined): number[] {
  return against === undefined ? [plan] : [against, plan];
}

/** Breakeven: where a result meets a target, or two plans meet, as one input moves. */
export function Breakeven(props: ScreenProps): JSX.Element {
  const resultGroups = createMemo(() => results(props.live.shape(), plansLookedAt(props.plan, props.against)));
  const inputGroups = createMemo(() => {
    const model = props.live.shape();
    const plan = model.plans[props.plan];
    return plan === undefined ? [] : inputs(model, plan);
  });
  const result = createMemo(() => chosen(resultGroups(), props.choice.result()));
  const input = createMemo(() => chosen(inputGroups(), props.choice.input()));
  const both = createMemo((): readonly [Cell, Cell] | undefined => {
    const [asked, moved] = [result(), input()];
    return asked && moved && [asked, moved];
  });
  return (
    <section class="question-screen breakeven" aria-labelledby="breakeven">
      <h2 class="heard" id="breakeven">
        Breakeven
      </h2>
      <Show when={both()} fallback={<NothingToAsk />}>
        {(cells) => (
          <Asking
            {...props}
            result={cells()[0]}
            input={cells()[1]}
            resultGroups={resultGroups()}
            inputGroups={inputGroups()}
          />
        )}
      </Show>
    </section>
  );
}

function NothingToAsk(): JSX.Element {
  return (
    <div class="empty">
      <p class="finding">There is nothing to ask about yet.</p>
      <p>It takes an entry that is calculated, and an input to move: give one a formula and another a number.</p>
    </div>
  );
}

interface AskingProps extends ScreenProps {
  readonly result: Cell;
  readonly input: Cell;
  readonly resultGroups: ReturnType<typeof results>;
  readonly inputGroups: ReturnType<typeof inputs>;
}

function Asking(props: AskingProps): JSX.Element {
  const subject = createMemo(() => ({ result: props.result.id, plan: props.plan, against: props.against }));
  const prepared = createMemo(() => ready(props.live.model(), props.live.values(), subject()));
  const nameOf = createMemo(() => namesAmong(props.live.shape().cells));
  const lines = createMemo((): Lines | undefined => {
    const found = prepared()?.lines(props.input.id);
    return found && { ...found, lever: { ...found.lever, cell: named(found.lever.cell, nameOf()) } };
  });
  const result = createMemo(() => named(props.result, nameOf()));
  const ask = (input: Cell): void => {
    const { plans } = props.live.shape();
    const touched = touchedBy(
      plansLookedAt(props.plan, props.against).map((plan) => plans[plan]),
      input.id,
    );
    const all = props.resultGroups.flatMap(({ cells }) => cells);
    const found = touched.has(props.result.id) ? undefined : all.find(({ id }) => touched.has(id));
    batch(() => {
      props.choice.setInput(input.name);
      if (found !== undefined) props.choice.setResult(found.name);
    });
  };
  const error = createMemo(() => errorIn(props.live, props.result, plansLookedAt(props.plan, props.against)));
  return (
    <>
      <UsualQuestions live={props.live} plan={props.plan} prepared={prepared()} input={props.input} ask={ask} />
      <div class="asking">
        <Chooser
          label="Result"
          groups={props.resultGroups}
          chosen={props.result.name}
          choose={(name) => props.choice.setResult(name)}
        />
        <Chooser
          label="as this input moves"
          groups={props.inputGroups}
          chosen={props.input.name}
          choose={(name) => props.choice.setInput(name)}
        />
      </div>
      <Switch>
        <Match when={error()}>
          {(reason) => (
            <CannotCompute result={props.result} error={reason()} cells={props.live.model().cells} goTo={props.goTo} />
          )}
        </Match>
        <Match when={lines()}>
          {(ready) => <BreakevenAnswer {...props} result={result()} lines={ready()} subject={subject()} />}
        </Match>
      </Switch>
    </>
  );
}
