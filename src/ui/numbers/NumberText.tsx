import { createEffect, createMemo, on, type JSX } from 'solid-js';
import { here } from '../here';
import { glowSoon } from './glow';

/** A number split at its decimal mark, so that numbers below one another stand aligned on it; a change glows. */
export function NumberText(props: { text: string; class?: string }): JSX.Element {
  const parts = createMemo(() => {
    const at = props.text.indexOf(here.marks.decimal);
    return at === -1 ? [props.text, ''] : [props.text.slice(0, at), props.text.slice(at)];
  });
  let element: HTMLSpanElement | undefined;
  createEffect(on(() => props.text, () => {
    if (element !== undefined) glowSoon(element);
  }, { defer: true }));
  return (
    <span class={`number ${props.class ?? ''}`} ref={(span) => { element = span; }}>
      <span class="whole">{parts()[0]}</span>
      <span class="part">{parts()[1]}</span>
    </span>
  );
}
