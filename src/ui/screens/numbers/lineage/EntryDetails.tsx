import { letterOf } from '../../../../present/text/planLetter';
import { createMemo, createSignal, For, Show, type JSX } from 'solid-js';
import type { Cell } from '../../../../model/cell';
import { sourceOf } from '../../../../model/sheet';
import { lineageTexts } from '../../../../present/numbers/lineageTexts';
import { seeTogether } from '../../../../present/together/heading';
import { Link } from '../../../kit/Link';
import { openTogether } from '../../../kit/together/openTogether';
import { PlanLetter } from '../../../kit/PlanLetter';
import { usePage } from '../../../app/pageContext';
import { EntryWork } from '../own/EntryWork';
import { Formula, ValueWithUnit } from './Formula';
import { Feeds, MadeFrom } from './Lineage';

interface AskedProps {
  readonly cell: Cell;
  readonly columns: readonly number[];
  readonly id: string;
}

/** Plans in which an entry has the same text, with that text. */
interface Filling {
  readonly text: string;
  readonly calculated: boolean;
  readonly plans: readonly { readonly plan: number; readonly letter: string }[];
}

/** The details below an entry's row: where its number comes from and what it feeds. */
export function EntryDetails(props: AskedProps): JSX.Element {
  const { choice } = usePage();
  return (
    <div class="asked-panel" id={props.id} role="group" aria-label={lineageTexts.panel(props.cell.label)}>
      <Words cell={props.cell} />
      <Fillings cell={props.cell} columns={props.columns} />
      <MadeFrom cell={props.cell} columns={props.columns} />
      <Feeds cell={props.cell} columns={props.columns} />
      <p class="see-together">
        <Link onPress={() => openTogether(choice, props.cell.name)}>{seeTogether}</Link>
      </p>
      <EntryWork cell={props.cell} />
    </div>
  );
}

function Words(props: { cell: Cell }): JSX.Element {
  const { store } = usePage();
  const source = createMemo(() => sourceOf(store.model().sheet, props.cell.row));
  return (
    <div class="asked-words">
      <Show when={props.cell.note}>
        <p dir="auto">{props.cell.note}</p>
      </Show>
      <Show when={source()}>
        <p class="quiet">{lineageTexts.source(source())}</p>
      </Show>
    </div>
  );
}

function Fillings(props: { cell: Cell; columns: readonly number[] }): JSX.Element {
  const { store } = usePage();
  const [as, setAs] = createSignal<'names' | 'labels'>('labels');
  const fillings = createMemo<readonly Filling[]>(
    () => {
      const found: Filling[] = [];
      props.columns.forEach((plan, column) => {
        const content = store.shown(plan, props.cell.id).content;
        const one = { plan, letter: letterOf(column, props.columns.length) };
        const at = found.findIndex(({ text }) => text === content?.text);
        const same = found[at];
        const calculated = content?.kind !== 'input';
        if (same === undefined) found.push({ text: content?.text ?? '', calculated, plans: [one] });
        else found[at] = { ...same, plans: [...same.plans, one] };
      });
      return found;
    },
    [],
    { equals: (a, b) => JSON.stringify(a) === JSON.stringify(b) },
  );
  return (
    <div class="asked-made">
      <For each={fillings()}>
        {(filling) => <FillingText cell={props.cell} filling={filling} alone={fillings().length === 1} as={as()} />}
      </For>
      <Show when={fillings().some(({ calculated }) => calculated)}>
        <Link onPress={() => setAs(as() === 'names' ? 'labels' : 'names')}>
          {as() === 'names' ? lineageTexts.showLabels : lineageTexts.showNames}
        </Link>
      </Show>
    </div>
  );
}

function FillingText(props: { cell: Cell; filling: Filling; alone: boolean; as: 'names' | 'labels' }): JSX.Element {
  const { store } = usePage();
  const planName = (plan: number): string => store.shape().plans[plan]?.name ?? '';
  return (
    <div class="filling">
      <Show when={!props.alone}>
        <p class="filling-plan">
          <For each={props.filling.plans}>
            {({ plan, letter }) => (
              <>
                <PlanLetter letter={letter} />
                {planName(plan)}{' '}
              </>
            )}
          </For>
        </p>
      </Show>
      <Show
        when={props.filling.calculated && props.filling.text}
        fallback={<p class="quiet">{lineageTexts.enteredHere}</p>}>
        <p>
          <Formula text={props.filling.text} plan={props.filling.plans[0]?.plan ?? 0} as={props.as} />
        </p>
      </Show>
      <For each={props.filling.plans}>
        {({ plan, letter }) => (
          <p class="worked">
            <PlanLetter letter={letter} />
            <Show when={props.filling.calculated}>
              <Formula text={props.filling.text} plan={plan} as="values" />
              <span class="equals"> = </span>
            </Show>
            <ValueWithUnit cell={props.cell} plan={plan} full />
          </p>
        )}
      </For>
    </div>
  );
}
