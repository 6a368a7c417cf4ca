import { For, type JSX } from 'solid-js';
import type { GroupMark } from '../../../present/together/groupMarks';

/** What is drawn in a tile of 7 by 7 for each pattern; the first is the whole tile. */
const tiles: readonly string[] = [
  'M0 0H7V7H0Z',
  'M-1 8L8 -1M-1 1L1 -1M6 8L8 6',
  'M2 2h3v3h-3Z',
  'M0 1.5H7M0 5H7',
  'M-1 -1L8 8M6 -1L8 1M-1 6L1 8',
  'M-1 8L8 -1M-1 -1L8 8',
  'M3.5 0V7',
  'M0 0H7V1.5H0Z',
];

/** Patterns that are planes and not lines. */
const planes: readonly number[] = [0, 2, 7];

/** The patterns of some groups in their tints, for boxes and for the key. */
export function GroupPatterns(props: { marks: readonly GroupMark[] }): JSX.Element {
  return (
    <defs>
      <For each={props.marks}>
        {({ pattern, tint }) => (
          <pattern
            id={`together-pattern-${pattern}-${tint}`}
            width="7"
            height="7"
            patternUnits="userSpaceOnUse"
            class="together-tile"
            data-tint={tint}>
            <path d={tiles[pattern]} classList={{ plane: planes.includes(pattern) }} />
          </pattern>
        )}
      </For>
    </defs>
  );
}
