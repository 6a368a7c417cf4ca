import { createMemo, createRenderEffect, createSignal, For, onMount, Show, type JSX } from 'solid-js';
import type { Decimal } from '../../core/number';
import type { Cell } from '../../model/cell';
import { wordsOf } from '../../model/choices';
import { unknownNumber } from '../cellSignals';
import { letterOf } from '../compared';
import { decimalsFor } from '../digits';
import { failingChecks, type Failing } from '../failing';
import { here } from '../here';
import { createMedia } from '../media';
import { LoneNumber } from '../numbers/NumberText';
import { printedUnit } from '../printedUnit';
import { Link, write } from '../words';
import { useWork } from '../work';

/** The results shown large, always in sight, and the checks that do not hold. */
export function Headlines(): JSX.Element {
  const { live, compared, covered } = useWork();
  const headlines = createMemo(() => live.shape().cells.filter((cell) => cell.role === 'headline'));
  let element: HTMLElement | undefined;
  onMount(() => {
    if (element !== undefined) covered.follow(element);
  });
  return (
    <section
      class="headlines"
      ref={(section) => {
        element = section;
      }}
      aria-label="Headlines"
      classList={{ 'two-plans': compared.columns().length > 1, bare: headlines().length === 0 }}>
      <Show when={headlines().length > 0}>
        <ul class="headline-list">
          <For each={headlines()}>{(cell) => <Headline cell={cell} columns={compared.columns()} />}</For>
        </ul>
      </Show>
      <FailingChecks />
    </section>
  );
}

function Headline(props: { cell: Cell; columns: readonly number[] }): JSX.Element {
  const { spot } = useWork();
  return (
    <li class="headline">
      <div class="headline-label">
        <button type="button" class="ask" onClick={() => spot.goToRow(props.cell.row, true)}>
          {props.cell.label}
        </button>{' '}
        <span class="unit">{printedUnit(props.cell.unitText)}</span>
      </div>
      <For each={props.columns}>
        {(plan, column) => (
          <HeadlineValue cell={props.cell} plan={plan} letter={letterOf(column(), props.columns.length)} />
        )}
      </For>
      <Show when={props.columns.length > 1}>
        <HeadlineDifference cell={props.cell} columns={props.columns} />
      </Show>
    </li>
  );
}

function HeadlineValue(props: { cell: Cell; plan: number; letter: string }): JSX.Element {
  const { live } = useWork();
  const shown = createMemo(() => live.shown(props.plan, props.cell.id));
  const text = createMemo(() => {
    const { number, error } = shown();
    return error === undefined ? (wordsOf(props.cell, number) ?? here.value(number, props.cell.unit)) : 'no value';
  });
  const planName = (): string => live.shape().plans[props.plan]?.name ?? '';
  return (
    <div class="headline-value" data-letter={props.letter}>
      <Show when={props.letter}>
        <span class="plan-letter" aria-hidden="true">
          {props.letter}
        </span>
        <span class="heard">{planName()}: </span>
      </Show>
      <LoneNumber text={text()} />
      <Change from={live.before(props.plan, props.cell.id)} to={shown().number} cell={props.cell} />
    </div>
  );
}

function HeadlineDifference(props: { cell: Cell; columns: readonly number[] }): JSX.Element {
  const { live } = useWork();
  const now = createMemo(() => props.columns.map((plan) => live.shown(plan, props.cell.id).number));
  const before = createMemo(() => props.columns.map((plan) => live.before(plan, props.cell.id)));
  const decimals = createMemo(() => Math.max(...now().map((value) => decimalsFor(value, props.cell.unit))));
  const text = createMemo(() => {
    const [a, b] = now();
    if (a === undefined || b === undefined || a.isNaN() || b.isNaN() || props.cell.choices.length > 0) return '';
    return here.difference(a, b, props.cell.unit, decimals());
  });
  return (
    <div class="headline-value difference">
      <span class="plan-letter" aria-hidden="true">
        B − A
      </span>
      <span class="heard">difference: </span>
      <LoneNumber text={text()} />
      <Change from={lessFirst(before())} to={lessFirst(now())} cell={props.cell} decimals={decimals()} />
    </div>
  );
}

/** The second number less the first; NaN where there are no two. */
function lessFirst([a = unknownNumber, b = unknownNumber]: readonly Decimal[]): Decimal {
  return b.minus(a);
}

/**
 * The change since the last edit; blank where there is none, and its line is held free. One computation writes it all,
 * as in NumberText. Its arrow, and what the arrow says to those who hear the page, are headlines.css's.
 */
function Change(props: { from: Decimal; to: Decimal; cell: Cell; decimals?: number }): JSX.Element {
  const number = document.createTextNode('');
  const element = (<span class="change">{number}</span>) as HTMLElement;
  createRenderEffect<string>((before) => {
    const isChanged =
      props.cell.choices.length === 0 && !props.from.isNaN() && !props.to.isNaN() && !props.from.eq(props.to);
    const way = !isChanged ? 'none' : props.to.gt(props.from) ? 'up' : 'down';
    if (way !== before) element.dataset.way = way;
    write(number, isChanged ? here.difference(props.from, props.to, props.cell.unit, props.decimals) : '');
    return way;
  }, '');
  return element;
}

function sameFailing(a: readonly Failing[], b: readonly Failing[]): boolean {
  return a.length === b.length && a.every(({ cell, letters }, i) => cell === b[i]?.cell && letters === b[i].letters);
}

/** So many warnings stand one below the other where there is little room; of more, the first and how many follow. */
const mostWarnings = 2;

function FailingChecks(): JSX.Element {
  const { live, compared, spot, printing } = useWork();
  const isNarrow = createMedia('(max-width: 699.98px)');
  const [unfolded, setUnfolded] = createSignal(false);
  const failing = createMemo<readonly Failing[]>(
    () => failingChecks(live.shape().cells, compared.columns(), (plan, { id }) => live.shown(plan, id).number),
    [],
    { equals: sameFailing },
  );
  const isFolded = (): boolean => isNarrow() && !printing() && failing().length > mostWarnings;
  const shown = (): readonly Failing[] => (isFolded() && !unfolded() ? failing().slice(0, 1) : failing());
  return (
    <div class="failing" role="status">
      <For each={shown()}>
        {({ cell, letters }) => (
          <p>
            <strong>Warning{letters ? `, plan ${letters}` : ''}:</strong>{' '}
            <Link onPress={() => spot.goToRow(cell.row, true)}>{cell.label}</Link>
          </p>
        )}
      </For>
      <Show when={isFolded()}>
        <Link class="more" onPress={() => setUnfolded(!unfolded())}>
          {unfolded() ? 'Show the first only' : `and ${failing().length - 1} more warnings`}
        </Link>
      </Show>
    </div>
  );
}
