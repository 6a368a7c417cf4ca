import { batch, type JSX } from 'solid-js';
import { plansTexts } from '../../../present/plans/texts';
import { usePage } from '../../app/pageContext';
import { PlanChooser } from './PlanChooser';

/** Which two plans stand as A and B everywhere. */
export function CompareTwo(props: { names: readonly string[] }): JSX.Element {
  const { compared } = usePage();
  const nameOf = (plan: number | undefined): string => props.names[plan ?? -1] ?? '';
  /** A plan that is chosen for the place of the other changes places with it. */
  const choose = (against: string, plan: string): void =>
    batch(() => {
      compared.setAgainst(against);
      compared.setPlan(plan);
    });
  const now = (): [string, string] => [nameOf(compared.against()), nameOf(compared.plan())];
  return (
    <section class="part compare-two" aria-labelledby="plans-compare">
      <h3 id="plans-compare">{plansTexts.compare}</h3>
      <div class="asking">
        <PlanChooser
          label={plansTexts.comparePlan}
          letter="A"
          names={props.names}
          chosen={now()[0]}
          choose={(name) => choose(name, name === now()[1] ? now()[0] : now()[1])}
        />
        <PlanChooser
          label={plansTexts.compareWith}
          letter="B"
          names={props.names}
          chosen={now()[1]}
          choose={(name) => choose(name === now()[0] ? now()[1] : now()[0], name)}
        />
      </div>
      <p class="quiet">{plansTexts.compareExplained}</p>
    </section>
  );
}
