import { createMemo, createSignal, For, Show, type JSX } from 'solid-js';
import type { Cell } from '../../../model/cell';
import type { DataTable } from '../../../present/table/dataTable';
import type { Phrase } from '../../../present/text/phrase';
import { AnswerText } from '../sections/AnswerText';
import { Sentence } from '../sections/Sentence';
import { localFormat } from '../../app/preferences/localFormat';
import { apartSetting } from '../../app/preferences/settings/howSure';
import { TakeOut } from '../takeOut/TakeOut';
import { MethodLink } from '../method/MethodLink';
import type { Choice } from '../../app/screenProps';
import {
  driversOf,
  driversSentence,
  driversTable,
  tiedSentence,
  worthALine,
  type Driver,
} from '../../../present/howSure/drivers';
import type { Indices } from '../../../present/howSure/drawsFound';
import { driversTexts } from '../../../present/howSure/driversTexts';
import '../sections/section.css';
import './driverRows.css';

interface DriversProps {
  readonly indices: Indices;
  readonly cells: readonly Cell[];
  readonly choice: Choice;
  /** Ids of entries in the order wanted of the rows; undefined: the largest share first. */
  readonly order?: readonly number[];
  /** A remark beside the finding; its argument has the largest share first. */
  readonly remark?: (drivers: readonly Driver[]) => Phrase;
  readonly goTo: (cell: number) => void;
}

/**
 * Which guesses drive the spread. Where the file correlates entries, the table appears only on request, for entries as
 * if independent.
 */
export function DriversTable(props: DriversProps): JSX.Element {
  const tied = (): boolean => props.indices.tied.length > 0;
  const apart = (): boolean => props.choice.get(apartSetting);
  return (
    <>
      <Show when={tied()}>
        <div class="said">
          <p>
            <Sentence phrase={tiedSentence(props.indices, props.cells, apart())} />
          </p>
          <label class="check-choice">
            <input
              type="checkbox"
              checked={apart()}
              onChange={(event) => props.choice.set(apartSetting, event.currentTarget.checked)}
            />
            <span>{driversTexts.apart}</span>
          </label>
        </div>
      </Show>
      <Show when={!tied() || apart()}>
        <DriverRows {...props} />
      </Show>
      <MethodLink choice={props.choice} entry="indices" />
    </>
  );
}

/** Drivers in the order of some cells; those that are not among these come last. */
function inOrder(drivers: readonly Driver[], order: readonly number[] | undefined): readonly Driver[] {
  if (order === undefined) return drivers;
  const place = ({ cell }: Driver): number => (order.includes(cell.id) ? order.indexOf(cell.id) : order.length);
  return [...drivers].sort((a, b) => place(a) - place(b));
}

function DriverRows(props: DriversProps): JSX.Element {
  const [all, setAll] = createSignal(false);
  const drivers = createMemo(() => driversOf(props.indices, props.cells));
  const few = createMemo(() => worthALine(drivers()));
  const shown = createMemo(() => inOrder(all() ? drivers() : drivers().slice(0, few()), props.order));
  const table = createMemo(() => driversTable(shown(), localFormat));
  const rows = createMemo(() => shown().map((driver, i) => ({ driver, cells: table().rows[i]! })));
  const remark = createMemo(() => props.remark?.(drivers()) ?? []);
  return (
    <>
      <AnswerText main={driversSentence(drivers(), localFormat)} more={remark()} />
      <p class="key">
        <span>
          <span class="swatch alone" aria-hidden="true" /> {driversTexts.aloneKey}
        </span>
        <span>
          <span class="swatch together" aria-hidden="true" /> {driversTexts.withOthersKey}
        </span>
      </p>
      <ol class="driver-rows">
        <For each={rows()}>{(row) => <DriverRow row={row} goTo={props.goTo} />}</For>
      </ol>
      <TakeOut caption={table().caption} table={table} />
      <Show when={few() < drivers().length}>
        <button type="button" class="link more" aria-expanded={all()} onClick={() => setAll(!all())}>
          {all() ? driversTexts.fewer : driversTexts.more(drivers().length - few())}
        </button>
      </Show>
    </>
  );
}

function width(share: number): string {
  return `${Math.min(1, Math.max(0, share)) * 100}%`;
}

interface ShownDriver {
  readonly driver: Driver;
  readonly cells: DataTable['rows'][number];
}

function DriverRow(props: { row: ShownDriver; goTo: (cell: number) => void }): JSX.Element {
  const text = (column: number): string => props.row.cells[column]!.text;
  return (
    <li class="almanac-row">
      <div class="almanac-line">
        <button type="button" class="link" onClick={() => props.goTo(props.row.driver.cell.id)}>
          {text(0)}
        </button>
        <span class="leader" aria-hidden="true" />
        <span class="figure">
          <span class="unit">{driversTexts.alone}</span> {text(1)} <span class="unit">± {text(2)}</span>
        </span>
        <span class="figure">
          <span class="unit">{driversTexts.withOthers}</span> {text(3)} <span class="unit">± {text(4)}</span>
        </span>
      </div>
      <div class="share-bar" aria-hidden="true">
        <span class="together" style={{ width: width(props.row.driver.total) }} />
        <span class="alone" style={{ width: width(props.row.driver.first) }} />
      </div>
    </li>
  );
}
