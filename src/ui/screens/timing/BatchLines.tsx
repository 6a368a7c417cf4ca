import { createMemo, createSignal, createUniqueId, For, Show, untrack, type Accessor, type JSX } from 'solid-js';
import { field, type SheetRow } from '../../../model/sheet';
import type { Batch } from '../../../model/trials';
import type { OddBatch } from '../../../trade/oddBatches';
import { localFormat } from '../../app/preferences/localFormat';
import { BatchField } from './BatchField';
import { blankText, faultsOf, faultText, type BatchFaults } from '../../../present/timing/batchFaults';
import { columnHead, type Column } from '../../../present/timing/columns';
import type { KeptTrials } from './keptTrials';
import { ownCell } from '../../../present/timing/batchesTable';
import { none } from '../../../present/text/quantities';
import { withoutBatch, withText } from '../../../present/timing/sheetEdits';
import type { StepFound } from '../../../present/timing/study';
import { stepName } from '../../../present/timing/sentences';
import { leftOutText, oddText, oddTexts } from '../../../present/timing/odd';
import { batchesTexts, takenOutText } from '../../../present/timing/batchesTexts';

interface LinesProps {
  readonly kept: KeptTrials;
  readonly found: StepFound;
  readonly row: Accessor<SheetRow>;
  /** Index among the batches of the step. */
  readonly at: number;
  /** The columns in the row. */
  readonly beside: readonly Column[];
  /** The columns folded below the row. */
  readonly below: readonly Column[];
  readonly choose: (step: string) => void;
  /** The sound batches by their rows: those that count, and those that a person left out. */
  readonly byRow: Readonly<Record<'counted' | 'aside', ReadonlyMap<number, Batch>>>;
  /** Whether the file has so many batches that working them all out takes longer than a keystroke. */
  readonly isLong: boolean;
}

/** Milliseconds without a keystroke after which a file of many batches is worked out anew. */
const longWait = 600;

/** Fields that group batches: half a name would make a group of its own. */
const takenLate: ReadonlySet<string> = new Set(['step', 'way', 'left_out']);

function anyFault({ wrong, blank }: BatchFaults): boolean {
  return wrong.length > 0 || blank.length > 0;
}

function hasFault({ wrong }: BatchFaults, column: string): boolean {
  return wrong.some(({ where }) => where.column === column);
}

function putText(
  { kept, row, choose }: Pick<LinesProps, 'kept' | 'row' | 'choose'>,
  column: string,
  text: string,
): void {
  const after = withText(kept.trials().sheet, row().row, column, text);
  if (column !== 'step') return kept.put(after);
  kept.putWithWayBack(after, batchesTexts.nowOf(stepName(text.trim())));
  choose(text.trim());
}

function takeOut(kept: KeptTrials, row: SheetRow): void {
  kept.putWithWayBack(withoutBatch(kept.trials().sheet, row.row), takenOutText(field(row, 'plants')));
}

/** How what is typed into the fields of a batch could be read in two ways. */
interface Doubts {
  readonly has: (column: string) => boolean;
  /** Blank where there is none. */
  readonly all: () => string;
  /** @param message blank for none */
  readonly set: (column: string, message: string) => void;
}

function createDoubts(): Doubts {
  const [doubts, setDoubts] = createSignal<ReadonlyMap<string, string>>(new Map());
  const of = (column: string): string => doubts().get(column) ?? '';
  return {
    has: (column) => of(column) !== '',
    all: () => [...doubts().values()].filter(Boolean).join(' '),
    set: (column, message) => {
      if (untrack(() => of(column)) !== message) setDoubts(new Map(untrack(doubts)).set(column, message));
    },
  };
}

/** A batch as a row, with its faults and the folded fields below it. */
export function BatchLines(props: LinesProps): JSX.Element {
  const id = createUniqueId();
  const faults = createMemo(() => faultsOf(props.kept.trials(), props.row().row));
  const isOfRow = ({ row }: { readonly row: number }): boolean => row === props.row().row;
  const batch = createMemo((): Batch | undefined => props.byRow.counted.get(props.row().row));
  const aside = createMemo((): Batch | undefined => props.byRow.aside.get(props.row().row));
  const odd = (): OddBatch | undefined => props.found.odd.find(isOfRow);
  const doubts = createDoubts();
  const isBelow = (): boolean =>
    doubts.all() !== '' || anyFault(faults()) || props.below.length > 0 || !!odd() || !!aside();
  const isWrong = (column: string): boolean => doubts.has(column) || hasFault(faults(), column);
  const input = (column: Column): JSX.Element => (
    <BatchField
      label={batchesTexts.fieldOf(columnHead(column), props.at + 1)}
      column={column}
      late={takenLate.has(column.name)}
      wait={props.isLong ? longWait : undefined}
      text={props.row().fields.get(column.name) ?? ''}
      faultId={isWrong(column.name) ? id : ''}
      onText={(text) => putText(props, column.name, text)}
      onDoubt={(message) => doubts.set(column.name, message)}
    />
  );
  return (
    <>
      <tr classList={{ 'not-counted': batch() === undefined }}>
        <th scope="row">{props.at + 1}</th>
        <For each={props.beside}>
          {(column) => (
            <td class={`of-${column.kind}`} data-column={column.name}>
              {input(column)}
            </td>
          )}
        </For>
        <td class="of-number own">{ownCell(batch() ?? aside(), localFormat).text || none}</td>
        <td>
          <button
            type="button"
            class="link"
            aria-label={batchesTexts.takeOutBatch(props.at + 1)}
            onClick={() => takeOut(props.kept, props.row())}>
            {batchesTexts.takeOut}
          </button>
        </td>
      </tr>
      <Show when={isBelow()}>
        <tr class="batch-below">
          <td colspan={props.beside.length + 3}>
            <RareFields columns={props.below} input={input} />
            <FaultLines id={id} doubt={doubts.all()} faults={faults()} />
            <OddLines kept={props.kept} row={props.row().row} odd={odd()} aside={aside()} />
          </td>
        </tr>
      </Show>
    </>
  );
}

/** The fields for which there is no room in the row. */
function RareFields(props: { columns: readonly Column[]; input: (column: Column) => JSX.Element }): JSX.Element {
  return (
    <Show when={props.columns.length > 0}>
      <div class="rare-fields">
        <For each={props.columns}>
          {(column) => (
            <div>
              <span aria-hidden="true">{columnHead(column)}</span>
              {props.input(column)}
            </div>
          )}
        </For>
      </div>
    </Show>
  );
}

interface OddLinesProps {
  readonly kept: KeptTrials;
  readonly row: number;
  readonly odd: OddBatch | undefined;
  readonly aside: Batch | undefined;
}

/** Why a batch is odd, or is left out, with the button that changes that. */
function OddLines(props: OddLinesProps): JSX.Element {
  const leaveOut = (reason: string, sentence: string): void =>
    props.kept.putWithWayBack(withText(props.kept.trials().sheet, props.row, 'left_out', reason), sentence);
  return (
    <>
      <Show when={props.odd}>
        {(odd) => (
          <p class="odd">
            {oddText(odd(), localFormat)}{' '}
            <button type="button" class="link" onClick={() => leaveOut(oddTexts.usualReason, oddTexts.leftOutNow)}>
              {oddTexts.leaveOut}
            </button>
          </p>
        )}
      </Show>
      <Show when={props.aside}>
        {(batch) => (
          <p class="odd">
            {leftOutText(batch().leftOut)}{' '}
            <button type="button" class="link" onClick={() => leaveOut('', oddTexts.countsAgain)}>
              {oddTexts.countAgain}
            </button>
          </p>
        )}
      </Show>
    </>
  );
}

function FaultLines(props: { id: string; doubt: string; faults: BatchFaults }): JSX.Element {
  return (
    <div id={props.id}>
      <Show when={props.doubt}>{(sentences) => <p class="message fault">{sentences()}</p>}</Show>
      <For each={props.faults.wrong}>{(fault) => <p class="message fault">{faultText(fault, localFormat)}</p>}</For>
      <Show when={blankText(props.faults.blank)}>{(sentence) => <p class="quiet">{sentence()}</p>}</Show>
    </div>
  );
}
