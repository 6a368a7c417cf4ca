import { letterOf } from '../../../../present/text/planLetter';
import { createMemo, For, Show, type Accessor, type JSX } from 'solid-js';
import type { Cell } from '../../../../model/cell';
import type { Content } from '../../../../model/content';
import { sourceOf } from '../../../../model/sheet';
import { Link } from '../../../kit/Link';
import { PlanLetter } from '../../../kit/PlanLetter';
import { usePage, type PageState } from '../../../app/pageContext';
import { ValueWithUnit } from './Formula';
import { knownOf, lineageTexts } from '../../../../present/numbers/lineageTexts';
import { headlinesReached, leaves, readersOf } from '../../../../present/numbers/ancestry';

interface LineageProps {
  readonly cell: Cell;
  readonly columns: readonly number[];
}

/** A list of more inputs than this is folded at first. */
const shortList = 10;

function sameCells(a: readonly Cell[], b: readonly Cell[]): boolean {
  return a.length === b.length && a.every((cell, i) => cell === b[i]);
}

/** The cells related to an entry in some way, in any plan shown. */
function createCells({ store }: PageState, related: typeof leaves, asked: LineageProps): Accessor<readonly Cell[]> {
  const cells = createMemo(
    () => {
      const plans = asked.columns.flatMap((plan) => store.shape().plans[plan] ?? []);
      return related(store.shape(), plans, asked.cell.id);
    },
    [],
    { equals: sameCells },
  );
  return cells;
}

/** The inputs from which an entry is computed, with their notes and sources. */
export function MadeFrom(props: LineageProps): JSX.Element {
  const work = usePage();
  const inputs = createCells(work, leaves, props);
  return (
    <Show when={inputs().length > 0}>
      <details class="made-from" open={inputs().length <= shortList}>
        <summary>{lineageTexts.madeFrom(inputs().length)}</summary>
        <ul>
          <For each={inputs()}>{(input) => <Leaf cell={input} columns={props.columns} />}</For>
        </ul>
      </details>
    </Show>
  );
}

function Leaf(props: LineageProps): JSX.Element {
  const { store, navigation } = usePage();
  const filling = (plan: number): Content | undefined => store.shown(plan, props.cell.id).content;
  const filled = createMemo(() => props.columns.filter((plan) => filling(plan)?.kind === 'input'));
  const differ = createMemo(() => props.columns.some((plan) => filling(plan)?.own === true));
  const shown = (): readonly number[] => (differ() ? filled() : filled().slice(0, 1));
  return (
    <li>
      <Link onPress={() => navigation.goTo(props.cell.id)}>{props.cell.label}</Link>{' '}
      <For each={shown()}>
        {(plan) => (
          <>
            <Show when={differ()}>
              <PlanLetter letter={letterOf(props.columns.indexOf(plan), props.columns.length)} />
            </Show>
            <ValueWithUnit cell={props.cell} plan={plan} />{' '}
          </>
        )}
      </For>
      <Show when={knownOf(props.cell, sourceOf(store.model().sheet, props.cell.row))}>
        {(known) => <span class="quiet leaf-source">{known()}</span>}
      </Show>
    </li>
  );
}

/** The entries whose formulas name an entry, and the headlines that a change of it reaches. */
export function Feeds(props: LineageProps): JSX.Element {
  const work = usePage();
  const direct = createCells(work, readersOf, props);
  const reached = createCells(work, headlinesReached, props);
  return (
    <div class="feeds">
      <Show when={direct().length > 0} fallback={<p class="quiet">{lineageTexts.feedsNothing}</p>}>
        <p>
          <span class="quiet">{lineageTexts.feeds}</span> <Links cells={direct()} />
        </p>
      </Show>
      <Show when={reached().length > 0}>
        <p>
          <span class="quiet">{lineageTexts.reaches}</span> <Links cells={reached()} />
        </p>
      </Show>
    </div>
  );
}

/** Labels that lead to their entries. */
export function Links(props: { cells: readonly Cell[] }): JSX.Element {
  const { navigation } = usePage();
  return (
    <span class="links">
      <For each={props.cells}>
        {(cell, i) => (
          <>
            <span>
              <Link onPress={() => navigation.goTo(cell.id)}>{cell.label}</Link>
              {i() < props.cells.length - 1 ? ',' : ''}
            </span>{' '}
          </>
        )}
      </For>
    </span>
  );
}
