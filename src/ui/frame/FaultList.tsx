import { lazy, Show, Suspense, type JSX } from 'solid-js';
import { faultSummary } from '../../present/page/faultTexts';
import { usePage } from '../app/pageContext';
import { Dropdown } from '../kit/sections/Dropdown';

const FaultItems = lazy(async () => ({ default: (await import('./FaultItems')).FaultItems }));

/** The number of faults and notices; unfolded, a list in which each leads to its entry. */
export function FaultList(): JSX.Element {
  const { faults, notices, outside } = usePage().store;
  const summary = (): string => faultSummary(faults().length, notices().length, outside().length);
  return (
    <div role="status">
      <Show when={summary()}>
        <Dropdown class="fault-list" summary={<span classList={{ faulty: faults().length > 0 }}>{summary()}</span>}>
          <Suspense>
            <FaultItems />
          </Suspense>
        </Dropdown>
      </Show>
    </div>
  );
}
