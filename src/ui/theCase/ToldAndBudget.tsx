import { createMemo, For, type JSX } from 'solid-js';
import { decimal } from '../../core/number';
import type { Cell } from '../../model/cell';
import { usualResult } from '../choice';
import { Said } from '../finding/Said';
import { Sentence } from '../finding/Sentence';
import type { Phrase } from '../finding/phrase';
import { here } from '../here';
import { HowWorked } from '../method/HowWorked';
import type { ScreenProps } from '../screen';
import { Link, PlanLetter } from '../words';
import { BudgetView } from './BudgetView';
import { addsUp, type Made } from './caseOf';
import { finding, unchangedTold, unknownTold } from './caseTold';
import { headlineTold } from './headlineTold';
import { roundingTold } from './rounded';

interface ToldAndBudgetProps extends ScreenProps {
  readonly made: Made;
  readonly from: number;
  readonly nameOf: (cell: Cell) => string;
  /** Of the plan that is given up and of the one that is taken. */
  readonly names: readonly [string, string];
  /** What stands between the finding and the budget. */
  readonly words: JSX.Element;
}

/** What the headline in money a year says beside the budget; blank where the model has none. */
function headlineOf({ live, plan, from, made }: ToldAndBudgetProps): Phrase {
  const model = live.model();
  const cell = model.cells[model.ids.get(usualResult(model, plan)) ?? -1];
  if (cell?.role !== 'headline' || !addsUp(cell, made)) return [];
  const number = (index: number): ReturnType<typeof decimal> => live.values()[index]?.numbers[cell.id] ?? decimal(NaN);
  return headlineTold(made, cell, number(plan).minus(number(from)), here);
}

/** The finding in a sentence, and the budget that it comes from. */
export function ToldAndBudget(props: ToldAndBudgetProps): JSX.Element {
  const told = createMemo(() => finding(props.made, { plan: props.names[1], against: props.names[0] }, here));
  const remarks = createMemo(() =>
    [headlineOf(props), unchangedTold(props.made), roundingTold(props.made, here)].filter(({ length }) => length > 0),
  );
  const nameOf = (plan: number): string => (plan === props.from ? props.names[0] : props.names[1]);
  return (
    <>
      <p class="case-plans">
        From <PlanLetter letter="A" />
        {props.names[0]} to <PlanLetter letter="B" />
        {props.names[1]}
      </p>
      <Said>
        <p class="finding">
          <Sentence phrase={told()} />
        </p>
      </Said>
      <For each={props.made.unknown}>
        {(unknown) => (
          <p class="message fault">
            <Sentence phrase={unknownTold(unknown, nameOf)} />{' '}
            <Link onPress={() => props.goTo(unknown.error.cause)}>
              Go to {props.live.shape().cells[unknown.error.cause]?.label}
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
      <HowWorked choice={props.choice} entry="partial budget" />
    </>
  );
}
