import { createMemo, createSignal, For, type JSX } from 'solid-js';
import type { EntryGroup } from '../../../present/results/entryGroups';
import { namesAmong } from '../../../present/text/entryNames';

/** Most entries that a browser lays out in a list without a noticeable delay. */
const atOnce = 500;

/** A choice of one entry from entries under headings. A very long list is filled only when it gets the focus. */
export function EntryChooser(props: {
  label: string;
  groups: readonly EntryGroup[];
  chosen: string;
  choose: (name: string) => void;
}): JSX.Element {
  const [turnedTo, setTurnedTo] = createSignal(false);
  const shown = createMemo((): readonly EntryGroup[] => {
    const count = props.groups.reduce((sum, { cells }) => sum + cells.length, 0);
    return turnedTo() || count <= atOnce ? props.groups : only(props.groups, props.chosen);
  });
  // A closed list does not show the heading, so equal labels get it in their names.
  const nameOf = createMemo(() => namesAmong(props.groups.flatMap(({ cells }) => cells)));
  return (
    <label class="chooser">
      <span class="chooser-label">{props.label}</span>
      <select
        onPointerDown={() => setTurnedTo(true)}
        onFocus={() => setTurnedTo(true)}
        onChange={(event) => props.choose(event.currentTarget.value)}>
        <For each={shown()}>
          {(group) => (
            <optgroup label={group.heading}>
              <For each={group.cells}>
                {(cell) => (
                  <option value={cell.name} selected={cell.name === props.chosen}>
                    {nameOf()(cell)}
                  </option>
                )}
              </For>
            </optgroup>
          )}
        </For>
      </select>
    </label>
  );
}

/** The group of one entry, with that entry alone. */
function only(groups: readonly EntryGroup[], name: string): EntryGroup[] {
  return groups.flatMap(({ heading, cells }) => {
    const found = cells.filter((cell) => cell.name === name);
    return found.length === 0 ? [] : [{ heading, cells: found }];
  });
}
