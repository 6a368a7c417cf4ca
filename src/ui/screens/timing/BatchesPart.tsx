import { createEffect, createMemo, createSignal, For, Index, Show, type Accessor, type JSX } from 'solid-js';
import { createChartArea } from '../../kit/charts/chartArea';
import type { Choice } from '../../app/screenProps';
import { MethodLink } from '../../kit/method/MethodLink';
import { oddTexts } from '../../../present/timing/odd';
import { localFormat } from '../../app/preferences/localFormat';
import { batchesByRow, batchesTable } from '../../../present/timing/batchesTable';
import { PlainTable } from '../../kit/tables/PlainTable';
import { BatchLines } from './BatchLines';
import { columnsBeside, fieldColumns, columnHead, foldedNames, type Column } from '../../../present/timing/columns';
import type { KeptTrials } from './keptTrials';
import { withBatch } from '../../../present/timing/sheetEdits';
import type { StepFound } from '../../../present/timing/study';
import { batchCount, stepName } from '../../../present/timing/sentences';
import { localDay } from '../../../present/timing/watch';
import { batchesTexts } from '../../../present/timing/batchesTexts';
import { timingFields } from '../../../present/timing/texts';

interface BatchesProps {
  readonly choice: Choice;
  readonly kept: KeptTrials;
  readonly found: StepFound;
  readonly choose: (step: string) => void;
  /** Whether a blank batch was put in that is still to be shown. */
  readonly isBlank: boolean;
  readonly onShown: () => void;
}

/** At most this many batches are shown at first; their fields are made without a noticeable delay. */
const atOnce = 100;
/** From this many batches on a keystroke no longer works all of them out anew. */
const many = 1000;

function createByRow(props: Pick<BatchesProps, 'found'>) {
  const byRow = createMemo(() => {
    const { batches, aside } = props.found;
    return { counted: batchesByRow({ batches, aside: [] }), aside: batchesByRow({ batches: [], aside }) };
  });
  return byRow;
}

/** The columns for which there is room in the rows, and the others. */
function createColumns(width: Accessor<number>) {
  const count = createMemo(() => columnsBeside(width()));
  const beside = createMemo((): readonly Column[] => fieldColumns.slice(0, count()));
  const folded = createMemo((): readonly Column[] => fieldColumns.slice(count()));
  return { beside, folded };
}

/** A blank batch from elsewhere is shown once. */
function showBlank(props: BatchesProps, show: () => void): void {
  createEffect(() => {
    if (!props.isBlank) return;
    show();
    props.onShown();
  });
}

/** The batches of one step, with a field for every text. */
export function BatchesPart(props: BatchesProps): JSX.Element {
  const chartArea = createChartArea();
  const [unfolded, setUnfolded] = createSignal(false);
  const [all, setAll] = createSignal(false);
  const hidden = (): number => (all() ? 0 : Math.max(0, props.found.rows.length - atOnce));
  const rows = createMemo(() => props.found.rows.slice(0, props.found.rows.length - hidden()));
  const isLong = (): boolean => props.kept.trials().sheet.rows.length > many;
  const byRow = createByRow(props);
  const { beside, folded } = createColumns(() => chartArea.width());
  // For batches without a step, the field for the step is unfolded at once.
  const isNameless = (): boolean => props.found.step === '';
  const below = (): readonly Column[] => (unfolded() || isNameless() ? folded() : []);
  let body: HTMLElement | undefined;
  const add = (): void => {
    setAll(true);
    props.kept.put(withBatch(props.kept.trials().sheet, { step: props.found.step, date: localDay(new Date()) }));
    lastPlants(body)?.focus();
  };
  showBlank(props, () => {
    setAll(true);
    queueMicrotask(() => lastPlants(body)?.focus());
  });
  return (
    <section class="timing-batches" aria-labelledby="timing-batches">
      <h3 id="timing-batches">{batchesTexts.heading(stepName(props.found.step))}</h3>
      <div ref={(element) => chartArea.hold(element)}>
        <PlainTable
          class="batches"
          caption={batchesTexts.heading(stepName(props.found.step))}
          table={() => batchesTable(props.found, localFormat)}>
          <BatchesHead beside={beside()} />
          <tbody ref={(element) => (body = element)}>
            <Index each={rows()}>
              {(row, at) => (
                <BatchLines
                  {...props}
                  row={row}
                  at={at}
                  beside={beside()}
                  below={below()}
                  byRow={byRow()}
                  isLong={isLong()}
                />
              )}
            </Index>
          </tbody>
        </PlainTable>
      </div>
      <BatchButtons
        hidden={hidden()}
        showAll={() => setAll(true)}
        add={add}
        folded={isNameless() ? [] : folded()}
        unfolded={unfolded()}
        unfold={setUnfolded}
      />
      <BatchesFoot choice={props.choice} />
    </section>
  );
}

interface ButtonsProps {
  /** How many batches are not shown. */
  readonly hidden: number;
  readonly showAll: () => void;
  readonly add: () => void;
  /** Columns that can be folded out below each row. */
  readonly folded: readonly Column[];
  readonly unfolded: boolean;
  readonly unfold: (unfolded: boolean) => void;
}

function BatchButtons(props: ButtonsProps): JSX.Element {
  return (
    <div class="timing-buttons">
      <Show when={props.hidden > 0}>
        <button type="button" class="word" onClick={() => props.showAll()}>
          {batchesTexts.showMore(batchCount(props.hidden, localFormat))}
        </button>
      </Show>
      <button type="button" class="word" onClick={() => props.add()}>
        {batchesTexts.add}
      </button>
      <Show when={props.folded.length > 0}>
        <button type="button" class="word" aria-expanded={props.unfolded} onClick={() => props.unfold(!props.unfolded)}>
          {props.unfolded ? batchesTexts.fewerFields : foldedNames(props.folded)}
        </button>
      </Show>
    </div>
  );
}

function BatchesFoot(props: { choice: Choice }): JSX.Element {
  return (
    <>
      <p class="quiet">{batchesTexts.explained}</p>
      <MethodLink choice={props.choice} entry="odd batches">
        {oddTexts.method}
      </MethodLink>
    </>
  );
}

function BatchesHead(props: { beside: readonly Column[] }): JSX.Element {
  return (
    <thead>
      <tr>
        <th scope="col">
          <span class="heard">{batchesTexts.number}</span>
        </th>
        <For each={props.beside}>
          {(column) => (
            <th scope="col" class={`of-${column.kind}`}>
              {columnHead(column)}
            </th>
          )}
        </For>
        <th scope="col" class="of-number own">
          {timingFields.secondsEach}
        </th>
        <th scope="col" class="out">
          <span class="heard">{batchesTexts.takeOut}</span>
        </th>
      </tr>
    </thead>
  );
}

/** The field for the plants of the last batch. */
function lastPlants(body: HTMLElement | undefined): HTMLInputElement | undefined {
  return [...(body?.querySelectorAll<HTMLInputElement>('[data-column="plants"] input') ?? [])].at(-1);
}
