import { For, Index, type JSX } from 'solid-js';
import type { ByWeeks } from '../../../../trade/byWeeks';
import { boardsOf, type CropNames } from '../../../../present/beds/stageNames';
import { Sentence } from '../../../kit/sections/Sentence';
import { localFormat } from '../../../app/preferences/localFormat';
import { byWeeksSentence, splitRows } from '../../../../present/beds/stages/byWeeks';
import { byWeeksTexts } from '../../../../present/beds/stages/byWeeksTexts';

/** Why boards are not shared by weeks. */
export function ByWeeksView(props: { found: ByWeeks; names: CropNames }): JSX.Element {
  return (
    <section aria-labelledby="beds-by-weeks">
      <h3 id="beds-by-weeks">{byWeeksTexts.heading(props.names)}</h3>
      <p>
        <Sentence phrase={byWeeksSentence(props.found, props.names, localFormat)} />
      </p>
      <p class="quiet">{byWeeksTexts.reason(props.names)}</p>
      <div class="table-room" role="region" aria-label={byWeeksTexts.table(props.names)} tabindex="0">
        <table>
          <thead>
            <tr>
              <th scope="col">{byWeeksTexts.shared(props.names)}</th>
              <th scope="col">{byWeeksTexts.finished(props.names)}</th>
              <th scope="col">{byWeeksTexts.gain}</th>
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
