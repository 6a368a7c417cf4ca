import { createMemo, For, type JSX } from 'solid-js';
import { readTold, toldText } from '../../../present/told/toldText';
import { localFormat } from '../../app/preferences/localFormat';
import { usePage } from '../../app/pageContext';

/** The same once the part that works figures out is here; what is wrong with one stands behind it. */
export function ToldWords(props: { text: string }): JSX.Element {
  const { store, lesson } = usePage();
  const told = createMemo(() => readTold(store.shape(), props.text));
  return (
    <>
      {toldText(told(), store.model(), lesson.values(), localFormat)}
      <For each={told().faults}>{(fault) => <span class="message fault"> {fault}</span>}</For>
    </>
  );
}
