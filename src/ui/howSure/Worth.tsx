import { createMemo, For, Show, type JSX } from 'solid-js';
import type { Cell } from '../../model/cell';
import { Sentence } from '../finding/Sentence';
import { here } from '../here';
import { HowWorked } from '../method/HowWorked';
import type { Choice } from '../screen';
import type { Details } from './reply';
import { errorText } from './rounding';
import { clear, knowingOf, worthSentence, worthText } from './worth';

interface WorthProps {
  readonly details: Details;
  readonly result: Cell;
  readonly cells: readonly Cell[];
  readonly choice: Choice;
  readonly goTo: (cell: number) => void;
}

/** What is worth measuring before choosing. */
export function Worth(props: WorthProps): JSX.Element {
  const knowing = createMemo(() => knowingOf(props.details, props.cells));
  const rows = createMemo(() => clear(knowing()));
  const rest = (): number => knowing().length - rows().length;
  const shown = (value: number): string => worthText(value, props.result, here);
  return (
    <section class="part" aria-labelledby="worth">
      <h3 id="worth">What is worth measuring</h3>
      <p class="finding">
        <Sentence phrase={worthSentence(props.details, knowing(), props.result, here)} />
      </p>
      <Show when={props.details.knowingAll.value > 0}>
        <ol class="driver-rows">
          <For each={rows()}>
            {({ cell, name, value, error }) => (
              <WorthRow value={shown(value)} error={error} share={value / props.details.knowingAll.value}>
                <button type="button" class="link" onClick={() => props.goTo(cell.id)}>
                  {name}
                </button>
              </WorthRow>
            )}
          </For>
          <WorthRow value={shown(props.details.knowingAll.value)} error={props.details.knowingAll.error} share={1}>
            <span>Everything at once</span>
          </WorthRow>
        </ol>
        <Show when={rest() > 0 && rows().length > 0}>
          <p class="quiet">
            {rest() === 1 ? 'One other entry is' : `${rest()} other entries are`} worth nothing by themselves, or too
            little to tell from nothing with this many draws.
          </p>
        </Show>
      </Show>
      <HowWorked choice={props.choice} entry="knowing one" />
    </section>
  );
}

function WorthRow(props: { value: string; error: number; share: number; children: JSX.Element }): JSX.Element {
  return (
    <li class="almanac-row">
      <div class="almanac-line">
        {props.children}
        <span class="leader" aria-hidden="true" />
        <span class="figure">
          {props.value} <span class="unit">± {errorText(props.error, here)}</span>
        </span>
      </div>
      <div class="share-bar" aria-hidden="true">
        <span class="alone" style={{ width: `${Math.min(1, props.share) * 100}%` }} />
      </div>
    </li>
  );
}
