import { Show, type JSX } from 'solid-js';
import type { RoundingLoss } from '../../../../trade/roundingLoss';
import { Sentence } from '../../../kit/sections/Sentence';
import { HeadedTable } from '../../../kit/tables/HeadedTable';
import { localFormat } from '../../../app/preferences/localFormat';
import { Cautions } from '../../../kit/sections/Cautions';
import {
  lossTable,
  nextBatchSentence,
  roundingSentence,
  stagesSentence,
} from '../../../../present/beds/stages/rounding';
import { Suggestions, type SuggestionsProps } from '../suggestions/Suggestions';
import { roundingTexts } from '../../../../present/beds/stages/roundingTexts';

interface RoundingProps extends SuggestionsProps {
  readonly loss: RoundingLoss;
}

/** What whole boards cost, in which stages, and what would help. */
export function Rounding(props: RoundingProps): JSX.Element {
  return (
    <section aria-labelledby="beds-rounding">
      <h3 id="beds-rounding">{roundingTexts.heading}</h3>
      <p>
        <Sentence phrase={roundingSentence(props.loss, props.planSchedule.names, localFormat)} />
      </p>
      <Show when={stagesSentence(props.loss, props.planSchedule.names, localFormat).length > 0}>
        <p>
          <Sentence phrase={stagesSentence(props.loss, props.planSchedule.names, localFormat)} />
        </p>
      </Show>
      <HeadedTable
        label={roundingTexts.table}
        table={lossTable(props.loss, props.planSchedule.names, localFormat)}
        captioned={false}
      />
      <p>
        <Sentence phrase={nextBatchSentence(props.loss, props.planSchedule.names, localFormat)} />
      </p>
      <Suggestions {...props} />
      <Cautions topics={['foam']} />
    </section>
  );
}
