import { For, Index, type JSX } from 'solid-js';
import type { ByWeeks } from '../../trade/byWeeks';
import type { Stage } from '../../trade/schedule';
import { Sentence } from '../finding/Sentence';
import { here } from '../here';
import { byWeeksTold, splitRows } from './byWeeksTold';

/** Why boards are not shared by weeks. */
export function ByWeeksView(props: { found: ByWeeks; stages: readonly Stage[] }): JSX.Element {
  return (
    <section aria-labelledby="beds-by-weeks">
      <h3 id="beds-by-weeks">Why not share boards by weeks?</h3>
      <p><Sentence phrase={byWeeksTold(props.found, here)} /></p>
      <p class="quiet">
        A crowded board carries more plants, so plants that stand crowded need fewer boards than their weeks say.
        Boards go by plants entering × days ÷ plants a board.
      </p>
      <div class="table-room" role="region" aria-label="Table of ways to share the boards" tabindex="0">
        <table>
          <thead>
            <tr>
              <th scope="col">boards shared</th>
              <th scope="col">plants a week</th>
              <th scope="col">gain</th>
              <For each={props.stages}>{({ number }) => <th scope="col">boards, stage {number}</th>}</For>
            </tr>
          </thead>
          <tbody>
            <Index each={splitRows(props.found, here)}>
              {(row) => (
                <tr>
                  <th scope="row">{row().label}</th>
                  <td>{row().finished}</td>
                  <td>{row().gain}</td>
                  <Index each={row().boards}>{(boards) => <td>{boards()}</td>}</Index>
                </tr>
              )}
            </Index>
          </tbody>
        </table>
      </div>
    </section>
  );
}
