import { createMemo, Show, type JSX } from 'solid-js';
import { choiceBestSentences, type BestByChoice } from '../../../../present/allPlans/choiceSentences';
import type { PlanLines } from '../../../../present/allPlans/lines';
import { bestWay, namedPlans, planHead } from '../../../../present/allPlans/plans';
import type { ChoiceRow } from '../../../../present/breakeven/choices/rows';
import { choiceTable } from '../../../../present/breakeven/choices/table';
import { breakevenTexts } from '../../../../present/breakeven/texts';
import { commonTexts } from '../../../../present/text/commonTexts';
import { localFormat } from '../../../app/preferences/localFormat';
import { MethodLink } from '../../../kit/method/MethodLink';
import { Waiting } from '../../../kit/sections/Waiting';
import type { BreakevenAnswerProps } from '../answerProps';
import { ViewChoice } from '../ViewChoice';
import { createAllLines } from '../allPlans/allLines';
import { createChoiceRows } from './ChoicesAnswer';
import { ChoicesFound } from './ChoicesFound';

interface AllPlansChoicesProps extends BreakevenAnswerProps {
  /** Indices of the two plans compared, A first. */
  readonly compared: readonly number[];
}

/** The result in every plan with each choice of an input, and which plan is the best with which. */
export function AllPlansChoices(props: AllPlansChoicesProps): JSX.Element {
  const found = createAllLines(props);
  return <Show when={found()}>{(lines) => <Answer {...props} found={lines()} />}</Show>;
}

function Answer(props: AllPlansChoicesProps & { found: PlanLines }): JSX.Element {
  const asked = createMemo(() => {
    const { lever, lines } = props.found;
    return { lever, curves: lines.map(({ line }) => line), result: props.result };
  });
  const worked = createChoiceRows(() => asked());
  const matter = createMemo((): BestByChoice | undefined => {
    const known = worked();
    if (known === undefined) return undefined;
    const { lever, curves, result } = known.of;
    return {
      result,
      input: lever.cell,
      way: bestWay(result),
      plans: namedPlans(props.store.shape(), props.compared),
      today: curves.map(({ base }) => base),
      rows: known.rows,
    };
  });
  return (
    <>
      <Show when={matter()} fallback={<Waiting class="quiet wait">{commonTexts.working}</Waiting>}>
        {(known) => <Found matter={known()} />}
      </Show>
      <ViewChoice settings={props.settings} legend={breakevenTexts.compare} />
      <MethodLink choice={props.choice} entry="best plan" />
    </>
  );
}

function Found(props: { matter: BestByChoice }): JSX.Element {
  const words = createMemo(() => choiceBestSentences(props.matter, localFormat));
  const table = createMemo(() => {
    const { rows, input, result, plans } = props.matter;
    const columns = plans.map((plan, p) => ({ name: planHead(plan), of: ({ values }: ChoiceRow) => values[p]! }));
    return choiceTable(rows, input, result, columns, localFormat);
  });
  return <ChoicesFound words={words()} table={table()} />;
}
