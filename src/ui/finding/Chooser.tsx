import { For, type JSX } from 'solid-js';
import type { Group } from './askable';

/** A choice of one entry among entries under their headings. */
export function Chooser(props: {
  label: string;
  groups: readonly Group[];
  chosen: string;
  choose: (name: string) => void;
}): JSX.Element {
  return (
    <label class="chooser">
      <span class="chooser-label">{props.label}</span>
      <select onChange={(event) => props.choose(event.currentTarget.value)}>
        <For each={props.groups}>
          {(group) => (
            <optgroup label={group.heading}>
              <For each={group.cells}>
                {(cell) => (
                  <option value={cell.name} selected={cell.name === props.chosen}>{cell.label}</option>
                )}
              </For>
            </optgroup>
          )}
        </For>
      </select>
    </label>
  );
}
