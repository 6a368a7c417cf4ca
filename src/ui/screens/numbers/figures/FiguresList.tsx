import { createMemo, createSignal, For, Show, untrack, type JSX } from 'solid-js';
import { figureScopeOptions, figuresTexts, tallyText } from '../../../../present/numbers/figuresTexts';
import { figuresToOwn, figureTally, type FigureScope, type PlacedFigure } from '../../../../present/numbers/ownFigures';
import { takenOver } from '../../../../present/numbers/standings';
import { namesAmong } from '../../../../present/text/entryNames';
import { usePage } from '../../../app/pageContext';
import { RadioRow } from '../../../kit/choosers/RadioRow';
import { FigureItem } from './FigureItem';
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
function Figures(props: { figures: readonly PlacedFigure[]; onAnswer: () => void }): JSX.Element {
  const [answered, setAnswered] = createSignal<ReadonlySet<number>>(new Set());
  const rows = createMemo(() => {
    const open = new Set(takenOver(props.figures).map(({ cell }) => cell.row));
    return props.figures
      .filter(({ cell }) => open.has(cell.row) || answered().has(cell.row))
      .map(({ cell }) => cell.row);
  });
  const byRow = createMemo(() => new Map(props.figures.map((figure) => [figure.cell.row, figure])));
  const nameOf = createMemo(() => namesAmong(props.figures.map(({ cell }) => cell)));
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
                  name={nameOf()(figure().cell)}
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
