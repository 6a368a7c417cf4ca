import { letterOf } from '../../../present/text/planLetter';
import { listTexts } from '../../../present/numbers/listTexts';
import { For, Show, type JSX } from 'solid-js';
import { usePage } from '../../app/pageContext';

/** The names of the plans above their columns. With three plans or more, the two that are shown can be chosen. */
export function PlanHeads(): JSX.Element {
  const { store, compared, stickyHeight } = usePage();
  const names = (): readonly string[] => store.shape().plans.map((plan) => plan.name);
  const isElsewhere = (p: number, here: number): boolean => p !== here && compared.columns().includes(p);
  const choose = (column: number, name: string): void => {
    if (column === 0 && compared.columns().length > 1) compared.setAgainst(name);
    else compared.setPlan(name);
  };
  return (
    <Show when={compared.columns().length > 1}>
      <div class="plan-heads" style={{ '--covered': `${stickyHeight.height()}px` }}>
        <For each={compared.columns()}>
          {(plan, column) => {
            const letter = (): string => letterOf(column(), 2);
            return (
              <div class="plan-head" data-letter={letter()}>
                <span class="plan-letter">{letter()}</span>
                <Show when={names().length > 2} fallback={<bdi class="plan-name">{names()[plan]}</bdi>}>
                  <select
                    aria-label={listTexts.plan(letter())}
                    onChange={(event) => choose(column(), event.currentTarget.value)}>
                    <For each={names()}>
                      {(name, p) => (
                        <option value={name} dir="auto" selected={p() === plan} disabled={isElsewhere(p(), plan)}>
                          {name}
                        </option>
                      )}
                    </For>
                  </select>
                </Show>
              </div>
            );
          }}
        </For>
        <div class="plan-head difference-head">
          <span class="plan-name">{listTexts.secondLessFirst}</span>
        </div>
      </div>
    </Show>
  );
}
