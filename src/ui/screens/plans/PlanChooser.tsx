import type { JSX } from 'solid-js';
import { ListChooser } from '../../kit/choosers/ListChooser';
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
    <ListChooser
      class="chooser"
      label={
        <span class="chooser-label">
          {props.label} <PlanLetter letter={props.letter} />
        </span>
      }
      options={props.names.map((name) => ({ value: name, label: name }))}
      chosen={props.chosen}
      choose={props.choose}
    />
  );
}
