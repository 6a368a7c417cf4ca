import { createMemo, Show, type JSX } from 'solid-js';
import type { Cell } from '../../../model/cell';
import { entryTexts } from '../../../present/numbers/entryTexts';
import { planRemark } from '../../../present/numbers/spokenField';
import { letterOf } from '../../../present/text/planLetter';
import { usePage } from '../../app/pageContext';
import { EntryValue } from './EntryValue';

interface EntryColumnProps {
  readonly cell: Cell;
  readonly plan: number;
  /** The place of the plan among those shown. */
  readonly column: number;
  readonly columns: readonly number[];
  /** Whether the plans shown can differ in this entry. */
  readonly varies: boolean;
}

/** What an entry shows in one plan, behind the plan's letter where the plans can differ. */
export function EntryColumn(props: EntryColumnProps): JSX.Element {
  const { store } = usePage();
  const letter = (): string => (props.varies ? letterOf(props.column, props.columns.length) : '');
  const planName = (): string => store.shape().plans[props.plan]?.name ?? '';
  const own = createMemo(() => store.shown(props.plan, props.cell.id).content?.own === true);
  const remark = (): string => planRemark(planName(), own(), props.varies);
  return (
    <div class="value" classList={{ 'of-a': letter() === 'A', 'of-b': letter() === 'B' }}>
      <Show when={letter()}>
        <span class="letter" aria-hidden="true">
          {letter()}
        </span>
        <span class="heard">{entryTexts.valueOf(planName())}</span>
      </Show>
      <EntryValue cell={props.cell} plan={props.plan} remark={remark()} />
    </div>
  );
}
