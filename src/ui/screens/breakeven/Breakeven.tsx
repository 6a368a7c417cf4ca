import { batch, createMemo, Show, type JSX } from 'solid-js';
import type { Cell } from '../../../model/cell';
import { chosenEntry, inputGroups, resultGroups, affectedBy } from '../../../present/results/entryGroups';
import { NoAnswer } from '../../kit/sections/NoAnswer';
import { QuestionScreen } from '../../kit/sections/QuestionScreen';
import { ResultAnswer } from '../../kit/sections/ResultAnswer';
import { EntryChooser } from '../../kit/choosers/EntryChooser';
import { createInputAsked } from '../../kit/choosers/inputAsked';
import { resultError } from '../../app/store/resultQuestion';
import { named, namesAmong } from '../../../present/text/entryNames';
import type { ScreenProps } from '../../app/screenProps';
import { BreakevenAnswer } from './BreakevenAnswer';
import { movableResult, type ResultLines } from '../../../present/results/resultLines';
import { UsualQuestions } from './UsualQuestions';
import { breakevenTexts } from '../../../present/breakeven/texts';
import { commonTexts } from '../../../present/text/commonTexts';
import '../../kit/charts/curve.css';
import '../../kit/fields/fields.css';
import '../../kit/sections/answers.css';
import './styles.css';

function plansLookedAt(plan: number, against: number | undefined): number[] {
  return against === undefined ? [plan] : [against, plan];
}

/** Breakeven: where a result meets a target, or two plans meet, as one input moves. */
export function Breakeven(props: ScreenProps): JSX.Element {
  const results = createMemo(() => resultGroups(props.store.shape(), plansLookedAt(props.plan, props.against)));
  const inputs = createMemo(() => {
    const model = props.store.shape();
    const plan = model.plans[props.plan];
    return plan === undefined ? [] : inputGroups(model, plan);
  });
  const result = createMemo(() => chosenEntry(results(), props.choice.result()));
  const asked = createInputAsked(props);
  const input = createMemo(() => chosenEntry(inputs(), asked()));
  const both = createMemo((): readonly [Cell, Cell] | undefined => {
    const [subject, moved] = [result(), input()];
    return subject && moved && [subject, moved];
  });
  return (
    <QuestionScreen question="breakeven">
      <Show
        when={both()}
        fallback={<NoAnswer finding={commonTexts.nothingToAsk} remedy={breakevenTexts.whatItTakes} />}>
        {(cells) => (
          <Asking {...props} result={cells()[0]} input={cells()[1]} resultGroups={results()} inputGroups={inputs()} />
        )}
      </Show>
    </QuestionScreen>
  );
}

interface AskingProps extends ScreenProps {
  readonly result: Cell;
  readonly input: Cell;
  readonly resultGroups: ReturnType<typeof resultGroups>;
  readonly inputGroups: ReturnType<typeof inputGroups>;
}

function Asking(props: AskingProps): JSX.Element {
  const subject = createMemo(() => ({ result: props.result.id, plan: props.plan, against: props.against }));
  const prepared = createMemo(() => movableResult(props.store.model(), props.store.values(), subject()));
  const nameOf = createMemo(() => namesAmong(props.store.shape().cells));
  const lines = createMemo((): ResultLines | undefined => {
    const found = prepared()?.lines(props.input.id);
    return found && { ...found, lever: { ...found.lever, cell: named(found.lever.cell, nameOf()) } };
  });
  const result = createMemo(() => named(props.result, nameOf()));
  const ask = (input: Cell): void => {
    const { plans } = props.store.shape();
    const affected = affectedBy(
      plansLookedAt(props.plan, props.against).map((plan) => plans[plan]),
      input.id,
    );
    const all = props.resultGroups.flatMap(({ cells }) => cells);
    const found = affected.has(props.result.id) ? undefined : all.find(({ id }) => affected.has(id));
    batch(() => {
      props.choice.setInput(input.name);
      if (found !== undefined) props.choice.setResult(found.name);
    });
  };
  const error = createMemo(() => resultError(props.store, props.result, plansLookedAt(props.plan, props.against)));
  return (
    <>
      <UsualQuestions store={props.store} plan={props.plan} prepared={prepared()} input={props.input} ask={ask} />
      <div class="asking">
        <EntryChooser
          label={commonTexts.result}
          groups={props.resultGroups}
          chosen={props.result.name}
          choose={(name) => props.choice.setResult(name)}
        />
        <EntryChooser
          label={breakevenTexts.moves}
          groups={props.inputGroups}
          chosen={props.input.name}
          choose={(name) => props.choice.setInput(name)}
        />
      </div>
      <ResultAnswer {...props} error={error()} known={lines()}>
        {(ready) => <BreakevenAnswer {...props} result={result()} lines={ready()} subject={subject()} />}
      </ResultAnswer>
    </>
  );
}
