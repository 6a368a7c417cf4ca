import type { JSX } from 'solid-js';
import { localFormat } from '../../app/preferences/localFormat';

/** A number split at its decimal mark, so that numbers below one another can be aligned. */
export function Aligned(props: { text: string }): JSX.Element {
  const at = (): number => {
    const found = props.text.indexOf(localFormat.marks.decimal);
    return found === -1 ? props.text.length : found;
  };
  return (
    <>
      {props.text.slice(0, at())}
      <span class="decimals">{props.text.slice(at())}</span>
    </>
  );
}
