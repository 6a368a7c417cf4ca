import { For, type JSX } from 'solid-js';
import type { Problem } from '../../../core/problem';
import { quotedParts } from '../../../present/text/quotedParts';

/** The message of a fault; the text of the file that it quotes goes by its own direction. */
export function FaultText(props: { fault: Problem }): JSX.Element {
  return <For each={quotedParts(props.fault)}>{({ text, quoted }) => (quoted ? <bdi>{text}</bdi> : text)}</For>;
}
