import { createMemo, Index, Show, type JSX } from 'solid-js';
import type { Problem } from '../../core/problem';
import { faultPlace, faultSummary, faultTexts } from '../../present/page/faultTexts';
import { Link } from '../kit/Link';
import { usePage } from '../app/pageContext';
import { Dropdown } from '../kit/sections/Dropdown';

/** At most this many faults are listed. */
const longest = 200;

/** The number of faults and notices; unfolded, a list in which each leads to its entry. */
export function FaultList(): JSX.Element {
  const { faults, notices } = usePage().store;
  const summary = (): string => faultSummary(faults().length, notices().length);
  return (
    <div role="status">
      <Show when={summary()}>
        <Dropdown class="fault-list" summary={<span classList={{ faulty: faults().length > 0 }}>{summary()}</span>}>
          <ul>
            <Index each={faults().slice(0, longest)}>{(fault) => <FaultItem fault={fault()} quiet={false} />}</Index>
            <Show when={faults().length > longest}>
              <li class="quiet">{faultTexts.more(faults().length - longest)}</li>
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
  const place = createMemo(() => faultPlace(props.fault, cell()?.label));
  return (
    <li classList={{ quiet: props.quiet }}>
      <span class="fault-message">{props.fault.message}</span>{' '}
      <Show when={hasRow()} fallback={<span class="quiet">{faultTexts.inTheFile}</span>}>
        <Link onPress={() => navigation.goToRow(props.fault.where.row)}>{place().goTo}</Link>
        <span class="quiet">{place().more}</span>
      </Show>
    </li>
  );
}
