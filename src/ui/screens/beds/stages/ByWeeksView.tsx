import type { JSX } from 'solid-js';
import type { ByWeeks } from '../../../../trade/byWeeks';
import type { CropNames } from '../../../../present/beds/stageNames';
import { Sentence } from '../../../kit/sections/Sentence';
import { HeadedTable } from '../../../kit/tables/HeadedTable';
import { localFormat } from '../../../app/preferences/localFormat';
import { byWeeksSentence, splitTable } from '../../../../present/beds/stages/byWeeks';
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
        table={splitTable(props.found, props.names, localFormat)}
        captioned={false}
      />
    </section>
  );
}
