import { createMemo, createSignal, For, Index, Show, type JSX } from 'solid-js';
import type { Cell } from '../../model/cell';
import type { Problem } from '../../core/problem';
import { Asked } from '../asked/Asked';
import { letterOf } from '../compared';
import { createSight } from '../finding/sight';
import { here } from '../here';
import { printedUnit } from '../printedUnit';
import { Link, PlanLetter } from '../words';
import { useWork, WorkContext } from '../work';
import { EntryValue } from './EntryValue';
import { createFollowing } from './following';
import { NumberText } from './NumberText';
import { beforeName, remarksOf, sameRemarks, type Remark } from './remarks';
import { rowId } from './spot';

interface EntryRowProps {
  readonly cell: Cell;
  readonly columns: readonly number[];
  /** Whether the plans shown can differ here. */
  readonly varies: boolean;
  readonly faults: readonly Problem[];
  /** Whether its group is in sight. */
  readonly near: boolean;
}

/** One line of the almanac: label, leader, the value in each plan, unit, difference. */
export function EntryRow(props: EntryRowProps): JSX.Element {
  const work = useWork();
  const { spot } = work;
  let row: HTMLLIElement | undefined;
  const inSight = createSight(
    () => row,
    () => props.near,
  );
  const [inHand, setInHand] = createSignal(false);
  const live = createFollowing(work.live, () => inSight() || inHand() || work.printing(), work.calm);
  const shownColumns = createMemo(() => (props.varies ? props.columns : props.columns.slice(0, 1)));
  const isAsked = (): boolean => spot.isAsked(props.cell.row);
  const panel = (): string => `${rowId(props.cell.row)}-asked`;
  return (
    <li
      class="entry"
      ref={row}
      id={rowId(props.cell.row)}
      classList={{ single: !props.varies, asked: isAsked() }}
      onFocusIn={() => setInHand(true)}
      onFocusOut={() => setInHand(false)}>
      <div class="entry-label">
        <button
          type="button"
          class="ask"
          aria-expanded={isAsked()}
          aria-controls={isAsked() ? panel() : undefined}
          onClick={() => spot.setAsked(props.cell.row, !isAsked())}>
          {props.cell.label}
        </button>
        <span class="leader" aria-hidden="true" />
      </div>
      <WorkContext.Provider value={{ ...work, live }}>
        <For each={shownColumns()}>
          {(plan, column) => (
            <EntryColumn
              cell={props.cell}
              plan={plan}
              column={column()}
              columns={props.columns}
              varies={props.varies}
            />
          )}
        </For>
        <span class="unit">{printedUnit(props.cell.unitText)}</span>
        <Show when={props.columns.length > 1}>
          <Difference cell={props.cell} columns={props.columns} varies={props.varies} />
        </Show>
        <Remarks cell={props.cell} columns={shownColumns()} faults={props.faults} />
        <Show when={isAsked()}>
          <Asked cell={props.cell} columns={props.columns} id={panel()} />
        </Show>
      </WorkContext.Provider>
    </li>
  );
}

interface EntryColumnProps extends Omit<EntryRowProps, 'faults' | 'near'> {
  readonly plan: number;
  readonly column: number;
}

function EntryColumn(props: EntryColumnProps): JSX.Element {
  const { live } = useWork();
  const letter = (): string => (props.varies ? letterOf(props.column, props.columns.length) : '');
  const planName = (): string => live.shape().plans[props.plan]?.name ?? '';
  const own = createMemo(() => live.shown(props.plan, props.cell.id).content?.own === true);
  const remark = (): string => {
    if (own()) return `own number of plan ${planName()}`;
    return props.varies ? `in plan ${planName()}` : '';
  };
  return (
    <div class="value" classList={{ 'of-a': letter() === 'A', 'of-b': letter() === 'B' }}>
      <Show when={letter()}>
        <span class="letter" aria-hidden="true">
          {letter()}
        </span>
        <span class="heard">{planName()}: </span>
      </Show>
      <EntryValue cell={props.cell} plan={props.plan} remark={remark()} />
    </div>
  );
}

function Difference(props: { cell: Cell; columns: readonly number[]; varies: boolean }): JSX.Element {
  const { live } = useWork();
  const text = createMemo(() => {
    const [a, b] = props.columns.map((plan) => live.shown(plan, props.cell.id));
    const isTruth = a?.content?.kind === 'calculated' && a.content.gives === 'truth';
    if (!props.varies || a === undefined || b === undefined || isTruth) return '';
    if (a.number.isNaN() || b.number.isNaN()) return '';
    if (props.cell.choices.length > 0) return a.number.eq(b.number) ? 'same' : '';
    return a.number.eq(b.number) ? 'same' : here.difference(a.number, b.number, props.cell.unit);
  });
  return (
    <div class="difference">
      <Show when={text() !== 'same' && text()} fallback={<span class="same">{text()}</span>}>
        {(difference) => (
          <>
            <span class="heard">difference: </span>
            <NumberText text={difference()} />
          </>
        )}
      </Show>
    </div>
  );
}

function Remarks(props: { cell: Cell; columns: readonly number[]; faults: readonly Problem[] }): JSX.Element {
  const { live } = useWork();
  const remarks = createMemo<readonly Remark[]>(
    () => {
      const shown = props.columns.map((plan) => live.shown(plan, props.cell.id));
      return remarksOf(live.shape(), props.cell, props.columns, shown);
    },
    [],
    { equals: sameRemarks },
  );
  const isSaid = (fault: Problem): boolean => remarks().some(({ text }) => text.includes(fault.message));
  return (
    <Show when={remarks().length + props.faults.length > 0}>
      <div class="remarks">
        <Index each={remarks()}>{(remark) => <RemarkText remark={remark()} />}</Index>
        <Index each={props.faults.filter((fault) => !isSaid(fault))}>
          {(fault) => <p class="message fault">{fault().message}</p>}
        </Index>
      </div>
    </Show>
  );
}

function RemarkText(props: { remark: Remark }): JSX.Element {
  const { spot } = useWork();
  return (
    <p class={`remark ${props.remark.kind}`} classList={{ message: props.remark.kind === 'fault' }}>
      <PlanLetter letter={props.remark.letter} />
      <Show when={props.remark.cell} fallback={props.remark.text}>
        {(cell) => (
          <>
            {beforeName[props.remark.kind]}
            <Link onPress={() => spot.goTo(cell().id)}>{cell().label}</Link>
          </>
        )}
      </Show>
    </p>
  );
}
