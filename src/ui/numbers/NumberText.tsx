import { createRenderEffect, type JSX } from 'solid-js';
import { here } from '../here';
import { glowSoon } from './glow';

/**
 * A number split at its decimal mark, so that numbers below one another stand aligned on it; a change glows.
 * One computation writes it all: a keystroke changes dozens of them.
 */
export function NumberText(props: { text: string }): JSX.Element {
  const [whole, part] = [document.createTextNode(''), document.createTextNode('')];
  const element = <span class="number"><span class="whole">{whole}</span><span class="part">{part}</span></span>;
  createRenderEffect<string | undefined>((before) => {
    const text = props.text;
    if (text === before) return text;
    const at = text.indexOf(here.marks.decimal);
    whole.data = at === -1 ? text : text.slice(0, at);
    part.data = at === -1 ? '' : text.slice(at);
    if (before !== undefined) glowSoon(element as HTMLElement);
    return text;
  }, undefined);
  return element;
}
