import { For, Show, type JSX } from 'solid-js';
import type { Cell } from '../../../../model/cell';
import { most } from '../../../../present/whatMatters/costs/candidates';
import { costsTexts } from '../../../../present/whatMatters/costs/texts';

interface WhichProps {
  readonly all: readonly Cell[];
  readonly chosen: readonly Cell[];
  readonly choose: (chosen: readonly Cell[]) => void;
}

/** The choice of the results side by side: at least one, at most as many as can be told apart. */
export function CostsPicker(props: WhichProps): JSX.Element {
  const has = (cell: Cell): boolean => props.chosen.some(({ id }) => id === cell.id);
  const isFixed = (cell: Cell): boolean => (has(cell) ? props.chosen.length === 1 : props.chosen.length >= most);
  const change = (cell: Cell, wanted: boolean): void =>
    props.choose(props.all.filter((one) => (one.id === cell.id ? wanted : has(one))));
  return (
    <fieldset class="which">
      <legend class="choices-legend">{costsTexts.which}</legend>
      <For each={props.all}>
        {(cell) => (
          <label class="check-choice">
            <input
              type="checkbox"
              checked={has(cell)}
              disabled={isFixed(cell)}
              onChange={(event) => change(cell, event.currentTarget.checked)}
            />
            <span>{cell.label}</span>
          </label>
        )}
      </For>
      <Show when={props.chosen.length >= most}>
        <p class="quiet">{costsTexts.noMore(most)}</p>
      </Show>
    </fieldset>
  );
}
