import { FaultText } from '../kit/sections/FaultText';
import { createMemo, Index, Show, type JSX } from 'solid-js';
import type { Problem } from '../../core/problem';
import { faultTexts } from '../../present/page/faultTexts';
import { commonTexts } from '../../present/text/commonTexts';
import { Link } from '../kit/Link';
import { usePage } from '../app/pageContext';
import { FitAll } from './FitAll';

/** At most this many faults are listed. */
const longest = 200;

/** Every fault and notice with a way to its entry, and what can be done for all numbers outside their ranges. */
export function FaultItems(): JSX.Element {
  const { faults, notices, outside } = usePage().store;
  return (
    <>
      <ul>
        <Index each={faults().slice(0, longest)}>{(fault) => <FaultItem fault={fault()} quiet={false} />}</Index>
        <Show when={faults().length > longest}>
          <li class="quiet">{faultTexts.more(faults().length - longest)}</li>
        </Show>
        <Index each={notices().slice(0, longest)}>{(notice) => <FaultItem fault={notice()} quiet={true} />}</Index>
      </ul>
      <Show when={outside().length > 0}>
        <FitAll />
      </Show>
    </>
  );
}

function FaultItem(props: { fault: Problem; quiet: boolean }): JSX.Element {
  const { store, navigation } = usePage();
  const row = (): number => props.fault.where.row;
  const label = createMemo(() => {
    const line = store.shape().lines.find((one) => one.row === row());
    if (line === undefined) return undefined;
    const said = line.kind === 'cell' ? store.shape().cells[line.cell]?.label : line.label;
    return said || faultTexts.line(row());
  });
  return (
    <li classList={{ quiet: props.quiet }}>
      <span class="fault-message">
        <FaultText fault={props.fault} />
      </span>{' '}
      <Show when={label()} fallback={<span class="quiet">{faultTexts.inTheFile}</span>}>
        {(entry) => <Link onPress={() => navigation.goToRow(row())}>{commonTexts.goTo(entry())}</Link>}
      </Show>
    </li>
  );
}
