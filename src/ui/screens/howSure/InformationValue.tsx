import { createMemo, For, Show, type JSX } from 'solid-js';
import type { Cell } from '../../../model/cell';
import { Sentence } from '../../kit/sections/Sentence';
import { localFormat } from '../../app/preferences/localFormat';
import { MethodLink } from '../../kit/method/MethodLink';
import type { Choice } from '../../app/screenProps';
import type { Details } from '../../../present/howSure/drawsFound';
import { errorText } from '../../../present/howSure/rounding';
import { clear, knownInputValues, worthSentence, worthText } from '../../../present/howSure/informationValue';
import { worthTexts } from '../../../present/howSure/texts';

interface WorthProps {
  readonly details: Details;
  readonly result: Cell;
  readonly cells: readonly Cell[];
  readonly choice: Choice;
  readonly goTo: (cell: number) => void;
}

/** What is worth measuring before choosing. */
export function InformationValue(props: WorthProps): JSX.Element {
  const knowing = createMemo(() => knownInputValues(props.details, props.cells));
  const rows = createMemo(() => clear(knowing()));
  const rest = (): number => knowing().length - rows().length;
  const shown = (value: number): string => worthText(value, props.result, localFormat);
  return (
    <section class="part" aria-labelledby="worth">
      <h3 id="worth">{worthTexts.heading}</h3>
      <p class="finding">
        <Sentence phrase={worthSentence(props.details, knowing(), props.result, localFormat)} />
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
            <span>{worthTexts.all}</span>
          </WorthRow>
        </ol>
        <Show when={rest() > 0 && rows().length > 0}>
          <p class="quiet">{worthTexts.rest(rest())}</p>
        </Show>
      </Show>
      <MethodLink choice={props.choice} entry="knowing one" />
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
          {props.value} <span class="unit">± {errorText(props.error, localFormat)}</span>
        </span>
      </div>
      <div class="share-bar" aria-hidden="true">
        <span class="alone" style={{ width: `${Math.min(1, props.share) * 100}%` }} />
      </div>
    </li>
  );
}
