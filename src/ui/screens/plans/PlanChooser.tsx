import { For, type JSX } from 'solid-js';
import { PlanLetter } from '../../kit/PlanLetter';

interface PlanChooserProps {
  readonly label: string;
  /** `A`, `B` or blank. */
  readonly letter: string;
  /** Of all plans. */
  readonly names: readonly string[];
  readonly chosen: string;
  readonly choose: (name: string) => void;
}

/** A choice of one plan. */
export function PlanChooser(props: PlanChooserProps): JSX.Element {
  return (
    <label class="chooser">
      <span class="chooser-label">
        {props.label} <PlanLetter letter={props.letter} />
      </span>
      <select onChange={(event) => props.choose(event.currentTarget.value)}>
        <For each={props.names}>
          {(name) => (
            <option value={name} selected={name === props.chosen}>
              {name}
            </option>
          )}
        </For>
      </select>
    </label>
  );
}
