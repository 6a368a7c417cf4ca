import { createMemo, Show, type JSX } from 'solid-js';
import { ownNumberIn } from '../../../present/plans/ownNumber';
import { plansTexts } from '../../../present/plans/texts';
import { anyInputGroups, chosenEntry } from '../../../present/results/entryGroups';
import type { ScreenProps } from '../../app/screenProps';
import { EntryChooser } from '../../kit/choosers/EntryChooser';
import { createInputAsked } from '../../kit/choosers/inputAsked';
import { OwnNumberView } from './OwnNumberView';
import type { PlanChanges } from './planChanges';
import { PlanChooser } from './PlanChooser';

interface OneChangeProps extends ScreenProps {
  readonly changes: PlanChanges;
  /** Of the plans. */
  readonly names: readonly string[];
  /** Index of the plan that is changed. */
  readonly changed: number;
  readonly choosePlan: (name: string) => void;
}

/** One input, changed in one plan alone. */
export function OneChange(props: OneChangeProps): JSX.Element {
  const groups = createMemo(() => anyInputGroups(props.store.shape()));
  const asked = createInputAsked(props);
  const cell = createMemo(() => chosenEntry(groups(), asked()));
  const own = createMemo(() => {
    const chosen = cell();
    return chosen && ownNumberIn(props.store.model(), props.changed, chosen);
  });
  return (
    <section class="part one-change" aria-labelledby="plans-one">
      <h3 id="plans-one">{plansTexts.oneChange}</h3>
      <Show when={props.names.length > 1} fallback={<p class="quiet">{plansTexts.oneChangeNeedsTwo}</p>}>
        <Show when={own()}>
          {(found) => (
            <>
              <div class="asking">
                <EntryChooser
                  label={plansTexts.input}
                  groups={groups()}
                  chosen={found().cell.name}
                  choose={(name) => props.choice.setInput(name)}
                />
                <PlanChooser
                  label={plansTexts.inPlan}
                  letter=""
                  names={props.names}
                  chosen={props.names[props.changed] ?? ''}
                  choose={props.choosePlan}
                />
              </div>
              <OwnNumberView
                own={found()}
                plan={props.names[props.changed] ?? ''}
                changes={props.changes}
                goTo={() => props.goTo(found().cell.id)}
              />
            </>
          )}
        </Show>
      </Show>
    </section>
  );
}
