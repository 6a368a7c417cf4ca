import { Index, Show, type JSX } from 'solid-js';
import type { RoundingLoss } from '../../trade/roundingLoss';
import { Sentence } from '../finding/Sentence';
import { here } from '../here';
import { Cautions } from './Cautions';
import { lossRows, nextTold, roundingTold, stagesTold } from './roundingTold';
import { Suggestions, type SuggestionsProps } from './Suggestions';

interface RoundingProps extends SuggestionsProps {
  readonly loss: RoundingLoss;
}

/** What whole boards cost, where, and what helps. */
export function Rounding(props: RoundingProps): JSX.Element {
  return (
    <section aria-labelledby="beds-rounding">
      <h3 id="beds-rounding">What rounding costs</h3>
      <p>
        <Sentence phrase={roundingTold(props.loss, props.asked.names, here)} />
      </p>
      <Show when={stagesTold(props.loss, props.asked.names, here).length > 0}>
        <p>
          <Sentence phrase={stagesTold(props.loss, props.asked.names, here)} />
        </p>
      </Show>
      <div class="table-room" role="region" aria-label="Table of what rounding costs" tabindex="0">
        <table>
          <thead>
            <tr>
              <th scope="col">where</th>
              <th scope="col">{props.asked.names.board.many}, on average</th>
              <th scope="col">{props.asked.names.plant.many} a week</th>
            </tr>
          </thead>
          <tbody>
            <Index each={lossRows(props.loss, props.asked.names, here)}>
              {(row) => (
                <tr>
                  <th scope="row">{row().label}</th>
                  <td>{row().boards}</td>
                  <td>{row().plants}</td>
                </tr>
              )}
            </Index>
          </tbody>
        </table>
      </div>
      <p>
        <Sentence phrase={nextTold(props.loss, props.asked.names, here)} />
      </p>
      <Suggestions {...props} />
      <Cautions topics={['foam']} />
    </section>
  );
}
