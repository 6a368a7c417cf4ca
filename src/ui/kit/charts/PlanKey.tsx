import { For, type JSX } from 'solid-js';
import { planLook } from '../../../present/allPlans/drawing';
import type { NamedPlan } from '../../../present/allPlans/plans';
import { PlanLetter } from '../PlanLetter';
import { LineSample } from './LineSample';
import './key.css';

interface PlanKeyProps {
  /** Each with a text after its name. */
  readonly plans: readonly (NamedPlan & { readonly figure: string; readonly leading: boolean })[];
  /** What these texts show. */
  readonly figures: string;
}

/** The key of a chart of all plans: each with its letter, its line and its number today. */
export function PlanKey(props: PlanKeyProps): JSX.Element {
  return (
    <>
      <p class="line-figures">{props.figures}</p>
      <ol class="line-key plan-key">
        <For each={props.plans}>
          {(plan) => (
            <li classList={{ leading: plan.leading }} data-letter={plan.letter}>
              <PlanLetter letter={plan.letter} />
              <LineSample leading={plan.leading} dash={planLook(plan.letter).dash} />
              <bdi>{plan.name}</bdi>
              <span class="leader" aria-hidden="true" />
              <span class="figure">{plan.figure}</span>
            </li>
          )}
        </For>
      </ol>
    </>
  );
}
