import { createMemo, For, Index, Show, type Accessor, type JSX } from 'solid-js';
import type { Problem } from '../../../core/problem';
import type { Line } from '../../../model/model';
import { createSight } from '../../kit/sections/sight';
import { ToldText } from '../../kit/sections/ToldText';
import { usePage } from '../../app/pageContext';
import { EntryRow } from './EntryRow';
import { OwnWork } from './own/OwnWork';
import { LazyRows } from './LazyRows';
import { listTexts } from '../../../present/numbers/listTexts';
import type { OutlineGroup } from '../../../present/numbers/outline';
import { rowId } from '../../app/store/entryNavigation';

/** The faults of a row, if any; updates its reader only if the row has or had any. */
export type FaultsByRow = (row: number) => readonly Problem[] | undefined;

interface GroupProps {
  readonly group: OutlineGroup;
  /** Number of its rows that are on the page. */
  readonly there: number;
  /** Whether it is not drawn yet. */
  readonly isToCome: boolean;
  /** Entries in which the plans shown can differ. */
  readonly varied: ReadonlySet<number>;
  readonly faults: FaultsByRow;
  readonly lazy: boolean;
}

/** Number of rows that are put on the page together. */
const together = 40;

function pieces(lines: readonly Line[]): readonly (readonly Line[])[] {
  const count = Math.ceil(lines.length / together);
  return Array.from({ length: count }, (_, i) => lines.slice(i * together, (i + 1) * together));
}

/** The rows under one heading, which can fold them away. */
export function GroupOfRows(props: GroupProps): JSX.Element {
  const { navigation, printing } = usePage();
  let group: HTMLDetailsElement | undefined;
  const inSight = createSight(() => group);
  const forced = (): boolean => navigation.words() !== '' || printing();
  const entries = (): number => props.group.lines.filter((line) => line.kind !== 'text').length;
  const there = createMemo(() => Math.min(props.there, props.group.lines.length));
  const byRow = createMemo(() => new Map(props.group.lines.map((line) => [line.row, line])));
  // A row stays on the page while its entry does, wherever that stands: what is open in it or in hand stays so.
  const rows = (lines: Accessor<readonly Line[]>): JSX.Element => (
    <For each={lines().map(({ row }) => row)}>
      {(row) => (
        <Row
          line={byRow().get(row)}
          varied={props.varied}
          faults={props.faults(row) ?? none}
          near={props.group.name === '' || inSight()}
        />
      )}
    </For>
  );
  const list = (
    <ul class="entries">
      <Show when={props.lazy} fallback={rows(() => props.group.lines.slice(0, there()))}>
        <Index each={pieces(props.group.lines)}>
          {(lines) => (
            <LazyRows first={lines()[0]?.row ?? 0} last={lines().at(-1)?.row ?? 0} count={lines().length}>
              {rows(lines)}
            </LazyRows>
          )}
        </Index>
      </Show>
    </ul>
  );
  return (
    <Show when={props.group.name} fallback={list}>
      <details
        class="group"
        hidden={props.isToCome}
        ref={group}
        style={{ '--rows': entries() }}
        open={navigation.isOpen(props.group.name) || forced()}
        onToggle={(event) => {
          if (!forced()) navigation.setOpen(props.group.name, event.currentTarget.open);
        }}>
        <summary>
          <h3>
            <bdi>{props.group.name}</bdi>
          </h3>
          <span class="count">{listTexts.entries(entries())}</span>
        </summary>
        {list}
        <Show when={there() === props.group.lines.length}>
          <OwnWork kinds={['entry']} group={props.group.name} />
        </Show>
      </details>
    </Show>
  );
}

const none: readonly Problem[] = [];

function sameFaults(a: readonly Problem[], b: readonly Problem[]): boolean {
  return a.length === b.length && a.every(({ message }, i) => message === b[i]?.message);
}

interface RowProps {
  /** Undefined in the moment in which the row goes. */
  readonly line: Line | undefined;
  readonly varied: ReadonlySet<number>;
  readonly faults: readonly Problem[];
  readonly near: boolean;
}

function Row(props: RowProps): JSX.Element {
  const { store, compared } = usePage();
  const faults = createMemo(() => props.faults, none, { equals: sameFaults });
  const line = createMemo<Line | undefined>((before) => props.line ?? before);
  const cell = createMemo(() => {
    const shown = line();
    return shown?.kind === 'cell' ? store.shape().cells[shown.cell] : undefined;
  });
  return (
    <Show
      when={cell()}
      fallback={<Show when={line()}>{(other) => <OtherRow line={other()} faults={faults()} />}</Show>}>
      {(one) => (
        <EntryRow
          cell={one()}
          columns={compared.columns()}
          varies={props.varied.has(one().id)}
          faults={faults()}
          near={props.near}
        />
      )}
    </Show>
  );
}

function OtherRow(props: { line: Line; faults: readonly Problem[] }): JSX.Element {
  const { lesson } = usePage();
  const messages = (): JSX.Element => (
    <For each={props.faults}>{(fault) => <p class="message fault">{fault.message}</p>}</For>
  );
  const note = (): string => (props.line.kind === 'text' ? props.line.note : '');
  const label = (): string => (props.line.kind === 'cell' ? '' : props.line.label);
  // A step of a lesson stays open, and its results are no secret any more.
  const step = createMemo(() => lesson.lesson()?.steps.findIndex(({ row }) => row === props.line.row) ?? -1);
  const isOpened = (): boolean => lesson.isOpened(step());
  const setOpened = (open: boolean): void => {
    if (step() >= 0) lesson.setOpened(step(), open);
  };
  return (
    <Show
      when={props.line.kind === 'refused' ? props.line : undefined}
      fallback={
        <li class="text-row" id={rowId(props.line.row)} tabindex="-1">
          <Show
            when={note()}
            fallback={
              <p>
                <ToldText text={label()} />
              </p>
            }>
            <details open={isOpened()} onToggle={(event) => setOpened(event.currentTarget.open)}>
              <summary>
                <ToldText text={label()} />
              </summary>
              <p>
                <ToldText text={note()} />
              </p>
            </details>
          </Show>
          {messages()}
        </li>
      }>
      {(line) => (
        <li class="entry refused" id={rowId(line().row)} tabindex="-1">
          <div class="entry-label">
            {line().label || line().name} <span class="quiet">{listTexts.notAnEntry}</span>
          </div>
          <div class="remarks">{messages()}</div>
        </li>
      )}
    </Show>
  );
}
