import { createMemo, For, Show, type JSX } from 'solid-js';
import { decimal, isNumberText } from '../../core/number';
import { wordsOf } from '../../model/choices';
import { liveTexts } from '../../present/live/liveTexts';
import type { Movable } from '../../present/live/movable';
import { letterOf } from '../../present/text/planLetter';
import { printedUnit } from '../../present/text/printedUnit';
import { localFormat } from '../app/preferences/localFormat';
import { rowId } from '../app/store/entryNavigation';
import { Link } from '../kit/Link';
import { EntryColumn } from '../screens/numbers/EntryColumn';
import { RangeAsked } from '../screens/numbers/RangeAsked';
import type { SentRows } from './sentRows';

/** One number of a case: its label, its value in each plan and its unit; once it is another, what was sent. */
export function NumberRow(props: { movable: Movable; rows: SentRows }): JSX.Element {
  const isChanged = createMemo(() =>
    props.movable.plans.some((plan) => props.rows.isChanged(props.movable.cell, plan)),
  );
  return (
    <li class="entry" id={rowId(props.movable.cell.row)} classList={{ single: props.movable.plans.length === 1 }}>
      <div class="entry-label">
        <bdi>{props.movable.cell.label}</bdi>
        <span class="leader" aria-hidden="true" />
      </div>
      <For each={props.movable.plans}>
        {(plan, column) => (
          <EntryColumn
            cell={props.movable.cell}
            plan={plan}
            column={column()}
            columns={props.movable.plans}
            varies={props.movable.plans.length > 1}
          />
        )}
      </For>
      <span class="unit">{printedUnit(props.movable.cell.unitText)}</span>
      <For each={props.movable.plans}>{(plan) => <RangeAsked cell={props.movable.cell} plan={plan} />}</For>
      <Show when={isChanged()}>
        <p class="remarks quiet">
          <WasSent {...props} />{' '}
          <Link onPress={() => props.rows.putBack(props.movable.cell)}>
            <span aria-hidden="true">{liveTexts.back}</span>
            <span class="heard">{liveTexts.putBack(props.movable.cell.label)}</span>
          </Link>
        </p>
      </Show>
    </li>
  );
}

/** The numbers, or the words of choices, that were sent where others stand now. */
function WasSent(props: { movable: Movable; rows: SentRows }): JSX.Element {
  const text = (plan: number, column: number): string => {
    const { cell, plans } = props.movable;
    const sent = props.rows.sent(cell, plan);
    const words = isNumberText(sent) ? wordsOf(cell, decimal(sent)) : undefined;
    const letter = plans.length > 1 ? letterOf(column, plans.length) : '';
    return [letter, words ?? localFormat.written(sent)].filter(Boolean).join(' ');
  };
  const texts = (): string[] =>
    props.movable.plans.flatMap((plan, column) =>
      props.rows.isChanged(props.movable.cell, plan) ? [text(plan, column)] : [],
    );
  return <>{liveTexts.asSent(texts().join(', '))}</>;
}
