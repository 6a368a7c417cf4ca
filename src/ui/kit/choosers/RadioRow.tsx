import type { Option } from '../../../present/text/option';
import { createUniqueId, For, type JSX } from 'solid-js';

/** A choice of one of a few, all in sight: radio buttons in a row. */
export function RadioRow<T extends string>(props: {
  legend: string;
  options: readonly Option<T>[];
  chosen: T;
  choose: (value: T) => void;
}): JSX.Element {
  const name = createUniqueId();
  return (
    <div class="choices" role="radiogroup" aria-labelledby={`${name}-legend`}>
      <span class="choices-legend" id={`${name}-legend`}>
        {props.legend}
      </span>
      <For each={props.options}>
        {(option) => (
          <label>
            <input
              type="radio"
              name={name}
              checked={option.value === props.chosen}
              onChange={() => props.choose(option.value)}
            />
            <span>{option.label}</span>
          </label>
        )}
      </For>
    </div>
  );
}
