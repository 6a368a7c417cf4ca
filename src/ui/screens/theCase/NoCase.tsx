import { For, Match, Switch, type JSX } from 'solid-js';
import type { Cell } from '../../../model/cell';
import { printedUnit } from '../../../present/text/printedUnit';
import { Link } from '../../kit/Link';
import type { Case, CaseBudget } from '../../../present/theCase/caseOf';

interface NoCaseProps {
  readonly found: Exclude<Case, CaseBudget>;
  readonly goTo: (cell: number) => void;
}

/** Says why there is no budget to show, and what would make one. */
export function NoCase(props: NoCaseProps): JSX.Element {
  const mixed = (): readonly Cell[] | undefined => (props.found.kind === 'units' ? props.found.cells : undefined);
  return (
    <div class="empty">
      <Switch>
        <Match when={props.found.kind === 'one plan'}>
          <p class="finding">A case is made for going from one plan to another, and this model has one plan.</p>
          <p>
            Add two columns to its file, named <b>plan: Today</b> and <b>plan: Tomorrow</b> or as you like. In each,
            write what that plan does differently, and leave the rest blank.
          </p>
        </Match>
        <Match when={props.found.kind === 'no marks'}>
          <p class="finding">No entry of this model is marked as a line of the yearly budget.</p>
          <p>
            In the column <b>budget</b> of its file write <b>return</b> beside what is taken in and <b>cost</b> beside
            what is spent, each thing once, in money a year such as EUR/year. What changes between the plans is then
            added up here.
          </p>
        </Match>
        <Match when={mixed()}>
          {(cells) => (
            <>
              <p class="finding">The lines of the budget cannot be added up: not all are in one currency a year.</p>
              <ul class="mixed">
                <For each={cells()}>
                  {(cell) => (
                    <li>
                      <Link onPress={() => props.goTo(cell.id)}>{cell.label}</Link>
                      <span class="leader" aria-hidden="true" />
                      <span>{printedUnit(cell.unitText) || 'no unit'}</span>
                    </li>
                  )}
                </For>
              </ul>
              <p>Give all of them the same unit, such as EUR/year.</p>
            </>
          )}
        </Match>
      </Switch>
    </div>
  );
}
