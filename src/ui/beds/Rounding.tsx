import { For, Index, Show, type JSX } from 'solid-js';
import type { RoundingLoss } from '../../trade/roundingLoss';
import type { Suggestion } from '../../trade/suggestions';
import { Sentence } from '../finding/Sentence';
import { here } from '../here';
import { Link } from '../words';
import type { Asked } from './asked';
import { Cautions } from './Cautions';
import { lossRows, nextTold, roundingTold, stagesTold } from './roundingTold';
import { fewSuggestions, partOf, suggestionTold } from './suggested';

interface RoundingProps {
  readonly loss: RoundingLoss;
  readonly suggested: readonly Suggestion[];
  readonly asked: Asked;
  readonly goTo: (cell: number) => void;
}

/** What whole boards cost, where, and what helps. */
export function Rounding(props: RoundingProps): JSX.Element {
  return (
    <section aria-labelledby="beds-rounding">
      <h3 id="beds-rounding">What rounding costs</h3>
      <p><Sentence phrase={roundingTold(props.loss, here)} /></p>
      <Show when={stagesTold(props.loss, here).length > 0}>
        <p><Sentence phrase={stagesTold(props.loss, here)} /></p>
      </Show>
      <div class="table-room" role="region" aria-label="Table of what rounding costs" tabindex="0">
        <table>
          <thead>
            <tr>
              <th scope="col">where</th>
              <th scope="col">boards, on average</th>
              <th scope="col">plants a week</th>
            </tr>
          </thead>
          <tbody>
            <Index each={lossRows(props.loss, here)}>
              {(row) => <tr><th scope="row">{row().label}</th><td>{row().boards}</td><td>{row().plants}</td></tr>}
            </Index>
          </tbody>
        </table>
      </div>
      <p><Sentence phrase={nextTold(props.loss, here)} /></p>
      <Suggested {...props} />
      <Cautions topics={['foam']} />
    </section>
  );
}

function Suggested(props: RoundingProps): JSX.Element {
  const few = (): Suggestion[] => fewSuggestions(props.suggested);
  return (
    <Show when={few().length > 0}
      fallback={<p>No other interval, density or half week that was tried finishes more.</p>}>
      <h4>What would help, each by itself</h4>
      <ul class="suggested">
        <For each={few()}>
          {(suggestion) => (
            <li>
              <Sentence phrase={suggestionTold(suggestion, props.asked.schedule, here)} />
              <Show when={props.asked.parts.get(partOf(suggestion.change))}>
                {(cell) => <> <Link onPress={() => props.goTo(cell().id)}>Go to {cell().label}</Link></>}
              </Show>
            </li>
          )}
        </For>
      </ul>
      <p class="quiet">
        Counted is room on the water only: what fewer days or more holes do to the plants, their price and the hours is
        not in it.
      </p>
    </Show>
  );
}
