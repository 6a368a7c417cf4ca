import { letterOf } from '../../present/text/planLetter';
import { createMemo, createRenderEffect, createSignal, For, lazy, onMount, Show, Suspense, type JSX } from 'solid-js';
import type { Decimal } from '../../core/number';
import { isQuantity, type Cell } from '../../model/cell';
import { wordsOf } from '../../model/choices';
import { unknownNumber } from '../app/store/cellSignals';
import { decimalsFor } from '../../present/text/digits';
import { failingChecks, type Failing } from '../../present/page/failingChecks';
import { headlineTexts } from '../../present/page/headlineTexts';
import { entryTexts } from '../../present/numbers/entryTexts';
import { withoutValue } from '../../present/numbers/valueText';
import { listTexts } from '../../present/numbers/listTexts';
import { localFormat } from '../app/preferences/localFormat';
import { createMedia } from '../app/preferences/media';
import { LoneNumber } from '../kit/numbers/NumberText';
import { printedUnit } from '../../present/text/printedUnit';
import { Link } from '../kit/Link';
import { writeText } from '../kit/numbers/writeText';
import { usePage } from '../app/pageContext';

const BestBeyond = lazy(async () => ({ default: (await import('./BestBeyond')).BestBeyond }));

/** Up to so many headlines stand in one row beside a warning. */
const fewHeadlines = 4;

/** The results shown large, always in sight, and the checks that do not hold. */
export function Headlines(): JSX.Element {
  const { store, compared, choice, stickyHeight } = usePage();
  const isNarrow = createMedia('(max-width: 699.98px)');
  const headlines = createMemo(() => {
    const all = store.shape().cells.filter((cell) => cell.role === 'headline');
    // Where only the first are in sight, the result that is asked about is among them.
    return isNarrow() ? all.sort((a, b) => +(b.name === choice.result()) - +(a.name === choice.result())) : all;
  });
  const failing = createMemo<readonly Failing[]>(
    () => failingChecks(store.shape().cells, compared.columns(), (plan, { id }) => store.shown(plan, id).number),
    [],
    { equals: sameFailing },
  );
  let element: HTMLElement | undefined;
  onMount(() => {
    if (element !== undefined) stickyHeight.follow(element);
  });
  return (
    <section
      class="headlines"
      ref={(section) => {
        element = section;
      }}
      style={{ '--changed-by': JSON.stringify(headlineTexts.changedBy) }}
      aria-label={headlineTexts.heading}
      classList={{
        'two-plans': compared.columns().length > 1,
        bare: headlines().length === 0,
        many: headlines().length > fewHeadlines,
        warned: failing().length > 0,
      }}>
      <Show when={headlines().length > 0}>
        <ul class="headline-list">
          <For each={headlines()}>{(cell) => <Headline cell={cell} columns={compared.columns()} />}</For>
        </ul>
      </Show>
      <Show when={store.shape().plans.length > 2}>
        <Suspense>
          <BestBeyond />
        </Suspense>
      </Show>
      <FailingChecks failing={failing()} />
    </section>
  );
}

function Headline(props: { cell: Cell; columns: readonly number[] }): JSX.Element {
  const { navigation } = usePage();
  return (
    <li class="headline">
      <div class="headline-label">
        <button type="button" class="ask" dir="auto" onClick={() => navigation.goToRow(props.cell.row, true)}>
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
  const { store } = usePage();
  const shown = createMemo(() => store.shown(props.plan, props.cell.id));
  const text = createMemo(() => {
    const { number, error } = shown();
    return error === undefined
      ? (wordsOf(props.cell, number) ?? localFormat.value(number, props.cell.unit))
      : withoutValue(error);
  });
  const planName = (): string => store.shape().plans[props.plan]?.name ?? '';
  return (
    <div class="headline-value" data-letter={props.letter}>
      <Show when={props.letter}>
        <span class="plan-letter" aria-hidden="true">
          {props.letter}
        </span>
        <span class="heard">{entryTexts.valueOf(planName())}</span>
      </Show>
      <LoneNumber text={text()} />
      <Change from={store.before(props.plan, props.cell.id)} to={shown().number} cell={props.cell} />
    </div>
  );
}

function HeadlineDifference(props: { cell: Cell; columns: readonly number[] }): JSX.Element {
  const { store } = usePage();
  const now = createMemo(() => props.columns.map((plan) => store.shown(plan, props.cell.id).number));
  const before = createMemo(() => props.columns.map((plan) => store.before(plan, props.cell.id)));
  const decimals = createMemo(() => Math.max(...now().map((value) => decimalsFor(value, props.cell.unit))));
  const text = createMemo(() => {
    const [a, b] = now();
    if (a === undefined || b === undefined || a.isNaN() || b.isNaN() || !isQuantity(props.cell)) return '';
    return localFormat.difference(a, b, props.cell.unit, decimals());
  });
  return (
    <div class="headline-value difference">
      <span class="plan-letter" aria-hidden="true">
        {listTexts.secondLessFirst}
      </span>
      <span class="heard">{entryTexts.difference}</span>
      <LoneNumber text={text()} />
      <Change from={lessFirst(before())} to={lessFirst(now())} cell={props.cell} decimals={decimals()} />
    </div>
  );
}

/** The second number less the first; NaN where there are not two. */
function lessFirst([a = unknownNumber, b = unknownNumber]: readonly Decimal[]): Decimal {
  return b.minus(a);
}

/**
 * The change since the last edit; its line stays blank where there is none. As in NumberText, a single effect writes
 * it. Its arrow, and the text for screen readers, come from headlines.css.
 */
function Change(props: { from: Decimal; to: Decimal; cell: Cell; decimals?: number }): JSX.Element {
  const number = document.createTextNode('');
  const element = (<span class="change">{number}</span>) as HTMLElement;
  createRenderEffect<string>((before) => {
    const isChanged = isQuantity(props.cell) && !props.from.isNaN() && !props.to.isNaN() && !props.from.eq(props.to);
    const way = !isChanged ? 'none' : props.to.gt(props.from) ? 'up' : 'down';
    if (way !== before) element.dataset.way = way;
    writeText(number, isChanged ? localFormat.difference(props.from, props.to, props.cell.unit, props.decimals) : '');
    return way;
  }, '');
  return element;
}

function sameFailing(a: readonly Failing[], b: readonly Failing[]): boolean {
  return a.length === b.length && a.every(({ cell, letters }, i) => cell === b[i]?.cell && letters === b[i].letters);
}

/** At most this many warnings are shown; of more, the first and how many follow. */
const mostWarnings = 2;

function FailingChecks(props: { failing: readonly Failing[] }): JSX.Element {
  const { navigation, printing } = usePage();
  const [unfolded, setUnfolded] = createSignal(false);
  const failing = (): readonly Failing[] => props.failing;
  const isFolded = (): boolean => !printing() && failing().length > mostWarnings;
  const shown = (): readonly Failing[] => (isFolded() && !unfolded() ? failing().slice(0, 1) : failing());
  return (
    <div class="failing" classList={{ unfolded: isFolded() && unfolded() }} role="status">
      <For each={shown()}>
        {({ cell, letters }) => (
          <p>
            <strong>{headlineTexts.warning(letters)}</strong>{' '}
            <Link onPress={() => navigation.goToRow(cell.row, true)}>{cell.label}</Link>
          </p>
        )}
      </For>
      <Show when={isFolded()}>
        <Link class="more" onPress={() => setUnfolded(!unfolded())}>
          {unfolded() ? headlineTexts.firstOnly : headlineTexts.moreWarnings(failing().length - 1)}
        </Link>
      </Show>
    </div>
  );
}
