import { createMemo, createSignal, For, Show, type JSX } from 'solid-js';
import type { Cell } from '../../../model/cell';
import type { Phrase } from '../../../present/text/phrase';
import { AnswerText } from '../sections/AnswerText';
import { Sentence } from '../sections/Sentence';
import { localFormat } from '../../app/preferences/localFormat';
import { apartSetting } from '../../app/preferences/settings/howSure';
import { MethodLink } from '../method/MethodLink';
import type { Choice } from '../../app/screenProps';
import { driversOf, driversSentence, tiedSentence, worthALine, type Driver } from '../../../present/howSure/drivers';
import type { Indices } from '../../../present/howSure/drawsFound';
import { errorText, percentText } from '../../../present/howSure/rounding';
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
        <For each={shown()}>{(driver) => <DriverRow driver={driver} goTo={props.goTo} />}</For>
      </ol>
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

function DriverRow(props: { driver: Driver; goTo: (cell: number) => void }): JSX.Element {
  const give = (error: number): string => `± ${errorText(error * 100, localFormat)}`;
  return (
    <li class="almanac-row">
      <div class="almanac-line">
        <button type="button" class="link" onClick={() => props.goTo(props.driver.cell.id)}>
          {props.driver.name}
        </button>
        <span class="leader" aria-hidden="true" />
        <span class="figure">
          <span class="unit">{driversTexts.alone}</span> {percentText(props.driver.first, localFormat)}{' '}
          <span class="unit">{give(props.driver.firstError)}</span>
        </span>
        <span class="figure">
          <span class="unit">{driversTexts.withOthers}</span> {percentText(props.driver.total, localFormat)}{' '}
          <span class="unit">{give(props.driver.totalError)}</span>
        </span>
      </div>
      <div class="share-bar" aria-hidden="true">
        <span class="together" style={{ width: width(props.driver.total) }} />
        <span class="alone" style={{ width: width(props.driver.first) }} />
      </div>
    </li>
  );
}
