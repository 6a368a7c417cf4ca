import { createMemo, For, Show, type JSX } from 'solid-js';
import type { Cell } from '../../model/cell';
import { wordsOf } from '../../model/choices';
import { here } from '../here';
import { printedUnit } from '../printedUnit';
import { truthWord } from '../numbers/truthWord';
import { Link } from '../words';
import { useWork } from '../work';
import { formulaWords, type Word } from './formulaWords';

/** A value with its unit, or a word where there is none. */
export function ValueWithUnit(props: { cell: Cell; plan: number; full?: boolean }): JSX.Element {
  const { live } = useWork();
  const text = createMemo(() => {
    const { number, error, content } = live.shown(props.plan, props.cell.id);
    if (error !== undefined) return 'no value';
    if (content?.kind === 'calculated' && content.gives === 'truth') return truthWord(props.cell, !number.isZero());
    const words = wordsOf(props.cell, number);
    if (words !== undefined) return words;
    if (props.full === true || content?.kind === 'input') return here.full(number);
    return here.value(number, props.cell.unit);
  });
  return (
    <span class="figure">
      {text()}
      <Show when={text() !== 'no value' && props.cell.unitText}>
        {' '}
        <span class="unit">{printedUnit(props.cell.unitText)}</span>
      </Show>
    </span>
  );
}

/** A formula for reading: in the names of its entries, in their labels, or in their values. */
export function Formula(props: { text: string; plan: number; as: 'names' | 'labels' | 'values' }): JSX.Element {
  const { live, spot } = useWork();
  const words = createMemo(() => formulaWords(props.text, live.shape()));
  const name = (cell: Cell): JSX.Element => (
    <Link class="name" onPress={() => spot.goTo(cell.id)}>
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
