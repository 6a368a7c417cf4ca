import type { JSX } from 'solid-js';
import { intoModelTexts } from '../../../present/timing/intoModelTexts';
import { noTarget, type TimingTarget } from '../../../present/timing/targets';
import { ListChooser } from '../../kit/choosers/ListChooser';

type Target = Pick<TimingTarget, 'cell'>;

interface TargetChooserProps {
  /** What fills the entry. */
  readonly name: string;
  readonly nameId?: string;
  /** Said to those who hear the page. */
  readonly label: string;
  readonly targets: readonly Target[];
  readonly chosen: Target | undefined;
  readonly choose: (name: string) => void;
}

/** The head of an offer: what was timed, and the entry that it fills. */
export function TargetChooser(props: TargetChooserProps): JSX.Element {
  return (
    <p class="offer-head">
      <span id={props.nameId}>{props.name}</span>
      <ListChooser
        label={<span class="heard">{props.label}</span>}
        options={[
          { value: noTarget, label: intoModelTexts.noEntry },
          ...props.targets.map(({ cell }) => ({ value: cell.name, label: cell.label })),
        ]}
        chosen={props.chosen?.cell.name ?? noTarget}
        choose={props.choose}
      />
    </p>
  );
}
