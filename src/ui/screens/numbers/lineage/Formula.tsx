import { createMemo, For, Show, type JSX } from 'solid-js';
import type { Cell } from '../../../../model/cell';
import { localFormat } from '../../../app/preferences/localFormat';
import { printedUnit } from '../../../../present/text/printedUnit';
import { valueText } from '../../../../present/numbers/valueText';
import { Link } from '../../../kit/Link';
import { usePage } from '../../../app/pageContext';
import { formulaWords, type Word } from '../../../../present/numbers/formulaWords';

/** A value with its unit, or a word where there is none. */
export function ValueWithUnit(props: { cell: Cell; plan: number; full?: boolean }): JSX.Element {
  const { store } = usePage();
  const shown = createMemo(() => store.shown(props.plan, props.cell.id));
  const text = createMemo(() => valueText(shown(), props.cell, props.full === true, localFormat));
  return (
    <span class="figure">
      {text()}
      <Show when={shown().error === undefined && props.cell.unitText}>
        {' '}
        <span class="unit">{printedUnit(props.cell.unitText)}</span>
      </Show>
    </span>
  );
}

/** A formula for reading, with the names, the labels or the values of its entries. */
export function Formula(props: { text: string; plan: number; as: 'names' | 'labels' | 'values' }): JSX.Element {
  const { store, navigation } = usePage();
  const words = createMemo(() => formulaWords(props.text, store.shape()));
  const name = (cell: Cell): JSX.Element => (
    <Link class="name" onPress={() => navigation.goTo(cell.id)}>
      {props.as === 'labels' ? cell.label : cell.name}
    </Link>
  );
  const entry = (cell: Cell): JSX.Element => (
    <Show when={props.as === 'values'} fallback={name(cell)}>
      <ValueWithUnit cell={cell} plan={props.plan} />
    </Show>
  );
  return (
    <span class={`formula ${props.as}`}>
      <For each={words()}>{(word: Word) => ('cell' in word ? entry(word.cell) : word.text)}</For>
    </span>
  );
}
