import { For, Show, type JSX } from 'solid-js';
import { dashes } from '../../../present/picture/labelledLines';
import { Link } from '../Link';
import { LineSample } from './LineSample';

/** A line of a chart as an item of the key. */
interface KeyLine {
  readonly label: string;
  readonly leading: boolean;
  /** A text after the label. */
  readonly figure: string;
  readonly goTo: () => void;
}

interface LineKeyProps {
  readonly lines: readonly KeyLine[];
  /** What these texts show. */
  readonly figures?: string;
}

/** The key of a chart: its numbered lines, each in its dash pattern. */
export function LineKey(props: LineKeyProps): JSX.Element {
  return (
    <>
      <Show when={props.figures}>
        <p class="line-figures">{props.figures}</p>
      </Show>
      <ol class="line-key">
        <For each={props.lines}>
          {(line, place) => (
            <li classList={{ leading: line.leading }}>
              <span class="line-number">{place() + 1}</span>
              <LineSample leading={line.leading} dash={dashes[place() % dashes.length]} />
              <Link onPress={() => line.goTo()}>{line.label}</Link>
              <Show when={line.figure}>
                <span class="leader" aria-hidden="true" />
                <span class="figure">{line.figure}</span>
              </Show>
            </li>
          )}
        </For>
      </ol>
    </>
  );
}
