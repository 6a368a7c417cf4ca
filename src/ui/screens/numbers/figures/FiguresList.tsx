import { createMemo, createSignal, For, Show, untrack, type JSX } from 'solid-js';
import { ownSources } from '../../../../model/change/sources';
import { wordsOf } from '../../../../model/choices';
import { figureScopeOptions, figuresTexts, tallyText } from '../../../../present/numbers/figuresTexts';
import { figuresToOwn, figureTally, type FigureScope } from '../../../../present/numbers/ownFigures';
import { takenOver, type Figure } from '../../../../present/numbers/standings';
import { numberWithUnit } from '../../../../present/text/numberFormat';
import { usePage } from '../../../app/pageContext';
import { localFormat } from '../../../app/preferences/localFormat';
import { RadioRow } from '../../../kit/choosers/RadioRow';
import './figures.css';

/** Whose the figures of the model are; unfolded, each that came with it can be called one's own with one press. */
export function FiguresList(): JSX.Element {
  const { store, settled } = usePage();
  const [isOpen, setOpen] = createSignal(false);
  const [scope, setScope] = createSignal<FigureScope>('headlines');
  const [said, setSaid] = createSignal(0);
  // While somebody types the list waits; what is said of a source changes nothing but the sheet.
  const figures = createMemo(() => {
    settled();
    said();
    store.shape();
    const model = untrack(() => store.model());
    return figuresToOwn(model, model.plans, scope());
  });
  const summary = createMemo(() => tallyText(figureTally(figures())));
  return (
    <Show when={figures().length > 0}>
      <details class="figures-list" onToggle={(event) => setOpen(event.currentTarget.open)}>
        <summary>
          {figuresTexts.heading} <span class="quiet">{summary()}</span>
        </summary>
        <Show when={isOpen()}>
          <p class="quiet">{figuresTexts.about}</p>
          <RadioRow legend={figuresTexts.scope} options={figureScopeOptions} chosen={scope()} choose={setScope} />
          <Figures figures={figures()} onAnswer={() => setSaid((count) => count + 1)} />
        </Show>
      </details>
    </Show>
  );
}

/** Those that are nobody's yet, and those that something was just said of, so that it can be said otherwise. */
function Figures(props: { figures: readonly Figure[]; onAnswer: () => void }): JSX.Element {
  const [answered, setAnswered] = createSignal<ReadonlySet<number>>(new Set());
  const rows = createMemo(() => {
    const open = new Set(takenOver(props.figures).map(({ cell }) => cell.row));
    return props.figures
      .filter(({ cell }) => open.has(cell.row) || answered().has(cell.row))
      .map(({ cell }) => cell.row);
  });
  const byRow = createMemo(() => new Map(props.figures.map((figure) => [figure.cell.row, figure])));
  const shownRows = createMemo(() => rows(), undefined, {
    equals: (a, b) => a.length === b.length && a.every((row, i) => row === b[i]),
  });
  return (
    <Show when={shownRows().length > 0} fallback={<p>{figuresTexts.none}</p>}>
      <ul>
        <For each={shownRows()}>
          {(row) => (
            <Show when={byRow().get(row)}>
              {(figure) => (
                <FigureItem
                  figure={figure()}
                  onAnswer={() => {
                    setAnswered((before) => new Set(before).add(row));
                    props.onAnswer();
                  }}
                />
              )}
            </Show>
          )}
        </For>
      </ul>
    </Show>
  );
}

function FigureItem(props: { figure: Figure; onAnswer: () => void }): JSX.Element {
  const { store, navigation } = usePage();
  const label = (): string => props.figure.cell.label;
  const say = (text: string): void => {
    store.edit({ row: props.figure.cell.row, column: 'source', text });
    store.finish();
    props.onAnswer();
  };
  return (
    <li>
      <span class="figure-name">{label()}</span>
      <span class="leader" aria-hidden="true" />
      <FigureValue figure={props.figure} />
      <div class="figure-below">
        <span class="quiet figure-source">{props.figure.source || figuresTexts.noSource}</span>
        <span class="figure-deeds" role="group" aria-label={label()}>
          <button
            type="button"
            class="word"
            aria-pressed={props.figure.standing === 'confirmed'}
            onClick={() => say(ownSources.confirmed(new Date()))}>
            {figuresTexts.mine}
          </button>
          <button
            type="button"
            class="word"
            aria-pressed={props.figure.standing === 'guess'}
            onClick={() => say(ownSources.guess(new Date()))}>
            {figuresTexts.guess}
          </button>
          <button type="button" class="word" onClick={() => navigation.goToRow(props.figure.cell.row)}>
            {figuresTexts.change}
          </button>
        </span>
      </div>
    </li>
  );
}

/** The number as its field has it: of the first plan that holds one. */
function FigureValue(props: { figure: Figure }): JSX.Element {
  const { store } = usePage();
  const text = (): string => {
    const { cell } = props.figure;
    const contents = store.model().plans.map((plan) => plan.contents[cell.id]);
    const content = contents.find((one) => one?.kind === 'input');
    if (content?.kind !== 'input') return '';
    return wordsOf(cell, content.number) ?? numberWithUnit(localFormat.written(content.text), cell.unitText);
  };
  return <span class="figure-value">{text()}</span>;
}
