import { createMemo, Index, Show, type JSX } from 'solid-js';
import type { Problem } from '../../core/problem';
import { Link } from '../kit/Link';
import { usePage } from '../app/pageContext';
import { Dropdown } from '../kit/sections/Dropdown';

/** Faults listed at once. */
const longest = 200;

function counted(count: number, word: string): string {
  return count === 1 ? `one ${word}` : `${count} ${word}s`;
}

/** How many faults and notices there are; opened, each leads to its entry. */
export function FaultList(): JSX.Element {
  const { faults, notices } = usePage().store;
  const summary = (): string => {
    const parts = [
      ...(faults().length > 0 ? [counted(faults().length, 'fault')] : []),
      ...(notices().length > 0 ? [counted(notices().length, 'notice')] : []),
    ];
    return parts.join(', ');
  };
  return (
    <div role="status">
      <Show when={summary()}>
        <Dropdown class="fault-list" summary={<span classList={{ faulty: faults().length > 0 }}>{summary()}</span>}>
          <ul>
            <Index each={faults().slice(0, longest)}>{(fault) => <FaultItem fault={fault()} quiet={false} />}</Index>
            <Show when={faults().length > longest}>
              <li class="quiet">And {faults().length - longest} more, at their entries.</li>
            </Show>
            <Index each={notices().slice(0, longest)}>{(notice) => <FaultItem fault={notice()} quiet={true} />}</Index>
          </ul>
        </Dropdown>
      </Show>
    </div>
  );
}

function FaultItem(props: { fault: Problem; quiet: boolean }): JSX.Element {
  const { store, navigation } = usePage();
  const cell = createMemo(() => store.shape().cells.find(({ row }) => row === props.fault.where.row));
  const hasRow = createMemo(() => store.shape().lines.some(({ row }) => row === props.fault.where.row));
  const place = (): string => {
    const { row, column } = props.fault.where;
    const said = [cell() && `row ${row}`, column].filter(Boolean).join(', ');
    return said && ` (${said})`;
  };
  return (
    <li classList={{ quiet: props.quiet }}>
      <span class="fault-message">{props.fault.message}</span>{' '}
      <Show when={hasRow()} fallback={<span class="quiet">In the file as a whole.</span>}>
        <Link onPress={() => navigation.goToRow(props.fault.where.row)}>
          Go to {cell()?.label ?? `row ${props.fault.where.row}`}
        </Link>
        <span class="quiet">{place()}</span>
      </Show>
    </li>
  );
}
