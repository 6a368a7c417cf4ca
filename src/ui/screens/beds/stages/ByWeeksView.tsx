import { Index, type JSX } from 'solid-js';
import type { ByWeeks } from '../../../../trade/byWeeks';
import { boardsOf, type CropNames } from '../../../../present/beds/stageNames';
import { Sentence } from '../../../kit/sections/Sentence';
import { HeadedTable } from '../../../kit/tables/HeadedTable';
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
      <HeadedTable
        label={byWeeksTexts.table(props.names)}
        heads={[
          byWeeksTexts.shared(props.names),
          byWeeksTexts.finished(props.names),
          byWeeksTexts.gain,
          ...props.names.stages.map((_name, i) => boardsOf(props.names, i).many),
        ]}>
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
      </HeadedTable>
    </section>
  );
}
