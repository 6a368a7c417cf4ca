import { createMemo, For, type JSX } from 'solid-js';
import { decimal } from '../../../core/number';
import type { Cell } from '../../../model/cell';
import { usualResult } from '../../app/preferences/choice';
import { LiveText } from '../../kit/sections/LiveText';
import { Sentence } from '../../kit/sections/Sentence';
import type { Phrase } from '../../../present/text/phrase';
import { localFormat } from '../../app/preferences/localFormat';
import { MethodLink } from '../../kit/method/MethodLink';
import type { ScreenProps } from '../../app/screenProps';
import { Link } from '../../kit/Link';
import { PlanLetter } from '../../kit/PlanLetter';
import { BudgetView } from './BudgetView';
import { addsUp, type CaseBudget } from '../../../present/theCase/caseOf';
import { caseSentence, unchangedSentence, unknownSentence } from '../../../present/theCase/sentences';
import { headlineSentence } from '../../../present/theCase/headline';
import { roundingNote } from '../../../present/theCase/rounded';
import { fromTo } from '../../../present/theCase/fromTo';
import { commonTexts } from '../../../present/text/commonTexts';

interface ToldAndBudgetProps extends ScreenProps {
  readonly made: CaseBudget;
  readonly from: number;
  readonly nameOf: (cell: Cell) => string;
  /** Names of the plan that is given up and of the one that is taken. */
  readonly names: readonly [string, string];
  /** Shown between the finding and the budget. */
  readonly words: JSX.Element;
}

/** How the headline in money a year compares with the budget; blank where the model has none. */
function headlineOf({ store, plan, from, made }: ToldAndBudgetProps): Phrase {
  const model = store.model();
  const cell = model.cells[model.ids.get(usualResult(model, plan)) ?? -1];
  if (cell?.role !== 'headline' || !addsUp(cell, made)) return [];
  const number = (index: number): ReturnType<typeof decimal> => store.values()[index]?.numbers[cell.id] ?? decimal(NaN);
  return headlineSentence(made, cell, number(plan).minus(number(from)), localFormat);
}

/** The finding in a sentence, and the budget behind it. */
export function AnswerAndBudget(props: ToldAndBudgetProps): JSX.Element {
  const sentence = createMemo(() =>
    caseSentence(props.made, { plan: props.names[1], against: props.names[0] }, localFormat),
  );
  const remarks = createMemo(() =>
    [headlineOf(props), unchangedSentence(props.made), roundingNote(props.made, localFormat)].filter(
      ({ length }) => length > 0,
    ),
  );
  const nameOf = (plan: number): string => (plan === props.from ? props.names[0] : props.names[1]);
  return (
    <>
      <p class="case-plans">
        <For each={fromTo(props.names)}>
          {(piece) => (typeof piece === 'string' ? piece : <PlanLetter letter={piece.letter} />)}
        </For>
      </p>
      <LiveText>
        <p class="finding">
          <Sentence phrase={sentence()} />
        </p>
      </LiveText>
      <For each={props.made.unknown}>
        {(unknown) => (
          <p class="message fault">
            <Sentence phrase={unknownSentence(unknown, nameOf)} />{' '}
            <Link onPress={() => props.goTo(unknown.error.cause)}>
              {commonTexts.goTo(props.store.shape().cells[unknown.error.cause]?.label ?? '')}
            </Link>
          </p>
        )}
      </For>
      {props.words}
      <BudgetView made={props.made} nameOf={props.nameOf} goTo={props.goTo} />
      <div class="remarks-below">
        <For each={remarks()}>
          {(remark) => (
            <p class="quiet">
              <Sentence phrase={remark} />
            </p>
          )}
        </For>
      </div>
      <MethodLink choice={props.choice} entry="partial budget" />
    </>
  );
}
