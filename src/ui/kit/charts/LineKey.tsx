import { For, Show, type JSX } from 'solid-js';
import { dashes } from '../../../present/picture/labelledLines';
import { Link } from '../Link';

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
              <svg viewBox="0 0 44 8" width="44" height="8" aria-hidden="true">
                <line
                  x1="0"
                  y1="4"
                  x2="44"
                  y2="4"
                  stroke="currentColor"
                  stroke-width={line.leading ? 3 : 1.75}
                  stroke-dasharray={dashes[place() % dashes.length]!.join(' ')}
                />
              </svg>
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
