import { For, Index, type JSX } from 'solid-js';
import type { ByWeeks } from '../../../../trade/byWeeks';
import { boardsOf, type CropNames } from '../../../../trade/stageNames';
import { Sentence } from '../../../kit/sections/Sentence';
import { localFormat } from '../../../app/preferences/localFormat';
import { byWeeksSentence, splitRows } from '../../../../present/beds/stages/byWeeks';

/** Why boards are not shared by weeks. */
export function ByWeeksView(props: { found: ByWeeks; names: CropNames }): JSX.Element {
  return (
    <section aria-labelledby="beds-by-weeks">
      <h3 id="beds-by-weeks">Why not share {props.names.board.many} by weeks?</h3>
      <p>
        <Sentence phrase={byWeeksSentence(props.found, props.names, localFormat)} />
      </p>
      <p class="quiet">
        A crowded {props.names.board.one} carries more {props.names.plant.many}, so the crowded weeks need fewer{' '}
        {props.names.board.many} than their share of the time. Share them by {props.names.plant.many} entering × days ÷{' '}
        {props.names.plant.many} a {props.names.board.one}.
      </p>
      <div
        class="table-room"
        role="region"
        aria-label={`Table of ways to share the ${props.names.board.many}`}
        tabindex="0">
        <table>
          <thead>
            <tr>
              <th scope="col">{props.names.board.many} shared</th>
              <th scope="col">{props.names.plant.many} a week</th>
              <th scope="col">gain</th>
              <For each={props.names.stages}>
                {(_name, i) => <th scope="col">{boardsOf(props.names, i()).many}</th>}
              </For>
            </tr>
          </thead>
          <tbody>
            <Index each={splitRows(props.found, localFormat)}>
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
