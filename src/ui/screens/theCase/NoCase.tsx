import { For, Match, Switch, type JSX } from 'solid-js';
import type { Cell } from '../../../model/cell';
import { printedUnit } from '../../../present/text/printedUnit';
import { Sentence } from '../../kit/sections/Sentence';
import { Link } from '../../kit/Link';
import type { Case, CaseBudget } from '../../../present/theCase/caseOf';
import { noCaseTexts } from '../../../present/theCase/noCaseTexts';

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
          <p class="finding">{noCaseTexts.onePlan}</p>
          <p>
            <Sentence phrase={noCaseTexts.addPlans} />
          </p>
        </Match>
        <Match when={props.found.kind === 'no marks'}>
          <p class="finding">{noCaseTexts.noMarks}</p>
          <p>
            <Sentence phrase={noCaseTexts.addMarks} />
          </p>
        </Match>
        <Match when={mixed()}>
          {(cells) => (
            <>
              <p class="finding">{noCaseTexts.mixedUnits}</p>
              <ul class="mixed">
                <For each={cells()}>
                  {(cell) => (
                    <li>
                      <Link onPress={() => props.goTo(cell.id)}>{cell.label}</Link>
                      <span class="leader" aria-hidden="true" />
                      <span>{printedUnit(cell.unitText) || noCaseTexts.noUnit}</span>
                    </li>
                  )}
                </For>
              </ul>
              <p>{noCaseTexts.alignUnits}</p>
            </>
          )}
        </Match>
      </Switch>
    </div>
  );
}
