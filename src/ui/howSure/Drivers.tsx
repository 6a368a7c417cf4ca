import { createMemo, createSignal, For, Match, Show, Switch, type JSX } from 'solid-js';
import type { Cell } from '../../model/cell';
import { Sentence } from '../finding/Sentence';
import { here } from '../here';
import { driversOf, driversSentence, forbidden, worthALine, type Driver } from './drivers';
import type { Indices } from './reply';
import { errorText, percentText } from './rounding';

interface DriversProps {
  readonly indices: Indices;
  readonly cells: readonly Cell[];
  readonly goTo: (cell: number) => void;
}

/** Which guesses drive the spread. */
export function Drivers(props: DriversProps): JSX.Element {
  const found = createMemo(() => ('found' in props.indices ? driversOf(props.indices, props.cells) : undefined));
  const pair = createMemo(() => ('pair' in props.indices ? props.indices : undefined));
  return (
    <section class="part" aria-labelledby="drivers">
      <h3 id="drivers">Which guesses drive the spread</h3>
      <Switch>
        <Match when={pair()}>{(known) => <p class="finding"><Sentence phrase={forbidden(known(), props.cells)} /></p>}</Match>
        <Match when={found()}>{(drivers) => <DriverRows drivers={drivers()} goTo={props.goTo} />}</Match>
      </Switch>
    </section>
  );
}

function DriverRows(props: { drivers: readonly Driver[]; goTo: (cell: number) => void }): JSX.Element {
  const [all, setAll] = createSignal(false);
  const few = createMemo(() => worthALine(props.drivers));
  const shown = (): readonly Driver[] => (all() ? props.drivers : props.drivers.slice(0, few()));
  return (
    <>
      <p class="finding"><Sentence phrase={driversSentence(props.drivers)} /></p>
      <p class="key">
        <span><span class="swatch alone" aria-hidden="true" /> alone: the share of the spread that goes away once you know this</span>
        <span><span class="swatch together" aria-hidden="true" /> with others: the share that stays open as long as you do not</span>
      </p>
      <ol class="driver-rows">
        <For each={shown()}>{(driver) => <DriverRow driver={driver} goTo={props.goTo} />}</For>
      </ol>
      <Show when={few() < props.drivers.length}>
        <button type="button" class="link more" aria-expanded={all()} onClick={() => setAll(!all())}>
          {all() ? 'Leave out those below 1 %' : `Show ${props.drivers.length - few()} more, below 1 % each`}
        </button>
      </Show>
    </>
  );
}

function width(share: number): string {
  return `${Math.min(1, Math.max(0, share)) * 100}%`;
}

function DriverRow(props: { driver: Driver; goTo: (cell: number) => void }): JSX.Element {
  const give = (error: number): string => `± ${errorText(error * 100, here)}`;
  return (
    <li class="almanac-row">
      <div class="almanac-line">
        <button type="button" class="link" onClick={() => props.goTo(props.driver.cell.id)}>{props.driver.cell.label}</button>
        <span class="leader" aria-hidden="true" />
        <span class="figure"><span class="unit">alone</span> {percentText(props.driver.first)} <span class="unit">{give(props.driver.firstError)}</span></span>
        <span class="figure"><span class="unit">with others</span> {percentText(props.driver.total)} <span class="unit">{give(props.driver.totalError)}</span></span>
      </div>
      <div class="share-bar" aria-hidden="true">
        <span class="together" style={{ width: width(props.driver.total) }} />
        <span class="alone" style={{ width: width(props.driver.first) }} />
      </div>
    </li>
  );
}
