import { createMemo, For, Show, type JSX } from 'solid-js';
import { decimal, isNumberText } from '../../core/number';
import { wordsOf } from '../../model/choices';
import { liveTexts } from '../../present/live/liveTexts';
import type { Movable } from '../../present/live/movable';
import { planRemark } from '../../present/numbers/spokenField';
import { letterOf } from '../../present/text/planLetter';
import { printedUnit } from '../../present/text/printedUnit';
import { usePage } from '../app/pageContext';
import { localFormat } from '../app/preferences/localFormat';
import { rowId } from '../app/store/entryNavigation';
import { Link } from '../kit/Link';
import { EntryValue } from '../screens/numbers/EntryValue';
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
      <For each={props.movable.plans}>{(plan, column) => <PlanValue {...props} plan={plan} column={column()} />}</For>
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

interface PlanValueProps {
  readonly movable: Movable;
  readonly plan: number;
  readonly column: number;
}

function PlanValue(props: PlanValueProps): JSX.Element {
  const { store } = usePage();
  const varies = (): boolean => props.movable.plans.length > 1;
  const letter = (): string => (varies() ? letterOf(props.column, props.movable.plans.length) : '');
  const own = createMemo(() => store.shown(props.plan, props.movable.cell.id).content?.own === true);
  const name = (): string => store.shape().plans[props.plan]?.name ?? '';
  return (
    <div class="value" classList={{ 'of-a': letter() === 'A', 'of-b': letter() === 'B' }}>
      <Show when={letter()}>
        <span class="letter" aria-hidden="true">
          {letter()}
        </span>
      </Show>
      <EntryValue cell={props.movable.cell} plan={props.plan} remark={planRemark(name(), own(), varies())} />
    </div>
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
