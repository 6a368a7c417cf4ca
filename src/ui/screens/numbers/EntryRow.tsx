import { createMemo, createSignal, For, Index, lazy, Show, Suspense, type JSX } from 'solid-js';
import type { Cell } from '../../../model/cell';
import type { Problem } from '../../../core/problem';
import { createSight } from '../../kit/sections/sight';
import { localFormat } from '../../app/preferences/localFormat';
import { printedUnit } from '../../../present/text/printedUnit';
import { LinkedSentence } from '../../kit/sections/LinkedSentence';
import { PlanLetter } from '../../kit/PlanLetter';
import { usePage, PageContext } from '../../app/pageContext';
import { EntryColumn } from './EntryColumn';
import { createFollowing } from './following';
import { NumberText } from '../../kit/numbers/NumberText';
import { entryTexts } from '../../../present/numbers/entryTexts';
import { differenceText } from '../../../present/numbers/valueText';
import { remarksOf, remarkText, sameRemarks, type Remark } from '../../../present/numbers/remarks';
import { RangeAsked } from './RangeAsked';
import { rowId } from '../../app/store/entryNavigation';

const EntryDetails = lazy(async () => ({ default: (await import('./lineage/EntryDetails')).EntryDetails }));

interface EntryRowProps {
  readonly cell: Cell;
  readonly columns: readonly number[];
  /** Whether the plans shown can differ in this entry. */
  readonly varies: boolean;
  readonly faults: readonly Problem[];
  /** Whether its group is in sight. */
  readonly near: boolean;
}

/** One entry in a line: label, value in each plan, unit, difference. */
export function EntryRow(props: EntryRowProps): JSX.Element {
  const work = usePage();
  const { navigation } = work;
  let row: HTMLLIElement | undefined;
  const inSight = createSight(
    () => row,
    () => props.near,
  );
  const [inHand, setInHand] = createSignal(false);
  const atOnce = (): boolean => inSight() || inHand() || work.printing();
  const store = createFollowing(work.store, atOnce, () => [work.settled(), work.lesson.hidden()]);
  const shownColumns = createMemo(() => (props.varies ? props.columns : props.columns.slice(0, 1)));
  const isAsked = (): boolean => navigation.isAsked(props.cell.row);
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
          onClick={() => navigation.setAsked(props.cell.row, !isAsked())}>
          <bdi>{props.cell.label}</bdi>
        </button>
        <span class="leader" aria-hidden="true" />
      </div>
      <PageContext.Provider value={{ ...work, store }}>
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
        <Show when={props.cell.range !== undefined}>
          <For each={shownColumns()}>{(plan) => <RangeAsked cell={props.cell} plan={plan} />}</For>
        </Show>
        <Show when={isAsked()}>
          <Details cell={props.cell} columns={props.columns} id={panel()} />
        </Show>
      </PageContext.Provider>
    </li>
  );
}

function Details(props: { cell: Cell; columns: readonly number[]; id: string }): JSX.Element {
  return (
    <Suspense>
      <EntryDetails {...props} />
    </Suspense>
  );
}

function Difference(props: { cell: Cell; columns: readonly number[]; varies: boolean }): JSX.Element {
  const { store } = usePage();
  const text = createMemo(() => {
    const [a, b] = props.columns.map((plan) => store.shown(plan, props.cell.id));
    if (!props.varies || a === undefined || b === undefined) return '';
    return differenceText(a, b, props.cell, localFormat);
  });
  return (
    <div class="difference">
      <Show when={text() !== entryTexts.same && text()} fallback={<span class="same">{text()}</span>}>
        {(difference) => (
          <>
            <span class="heard">{entryTexts.difference}</span>
            <NumberText text={difference()} />
          </>
        )}
      </Show>
    </div>
  );
}

function Remarks(props: { cell: Cell; columns: readonly number[]; faults: readonly Problem[] }): JSX.Element {
  const { store } = usePage();
  const remarks = createMemo<readonly Remark[]>(
    () => {
      const shown = props.columns.map((plan) => store.shown(plan, props.cell.id));
      return remarksOf(store.shape(), props.cell, props.columns, shown);
    },
    [],
    { equals: sameRemarks },
  );
  const isSaid = (fault: Problem): boolean => remarks().some((remark) => remarkText(remark).includes(fault.message));
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
  const { navigation } = usePage();
  const go = (): void => {
    const { cell } = props.remark;
    if (cell !== undefined) navigation.goTo(cell.id);
  };
  return (
    <p class={`remark ${props.remark.kind}`} classList={{ message: props.remark.kind === 'fault' }}>
      <PlanLetter letter={props.remark.letter} />
      <LinkedSentence phrase={props.remark.phrase} onPress={go} />
    </p>
  );
}
