import { For, Show, type JSX } from 'solid-js';
import type { Problem } from '../../../core/problem';
import type { Cell } from '../../../model/cell';
import { Link } from '../../kit/Link';
import { commonTexts } from '../../../present/text/commonTexts';

interface FaultsProps {
  readonly faults: readonly Problem[];
  readonly cells: readonly Cell[];
  readonly quiet: boolean;
  readonly goTo: (cell: number) => void;
}

/** Faults and notices of a schedule, each with a link to its entry. */
export function FaultLinks(props: FaultsProps): JSX.Element {
  const entry = (fault: Problem): Cell | undefined => props.cells.find(({ name }) => name === fault.where.cell);
  return (
    <Show when={props.faults.length > 0}>
      <ul class="beds-faults" role={props.quiet ? undefined : 'alert'}>
        <For each={props.faults}>
          {(fault) => (
            <li class="message" classList={{ fault: !props.quiet }}>
              {fault.message}{' '}
              <Show when={entry(fault)}>
                {(cell) => <Link onPress={() => props.goTo(cell().id)}>{commonTexts.goTo(cell().label)}</Link>}
              </Show>
            </li>
          )}
        </For>
      </ul>
    </Show>
  );
}
