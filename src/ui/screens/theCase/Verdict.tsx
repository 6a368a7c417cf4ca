import { createMemo, Show, type JSX } from 'solid-js';
import type { Cell } from '../../../model/cell';
import type { CaseBudget } from '../../../present/theCase/caseOf';
import { hangsOnTexts } from '../../../present/theCase/hangsOnTexts';
import { verdictPhrase } from '../../../present/theCase/verdict';
import { localFormat } from '../../app/preferences/localFormat';
import { LiveText } from '../../kit/sections/LiveText';
import { WaitingOr } from '../../kit/sections/WaitingOr';
import { Sentence } from '../../kit/sections/Sentence';
import type { Studies } from './studies';

interface VerdictProps {
  readonly made: CaseBudget;
  readonly studies: Studies;
  readonly nameOf: (cell: Cell) => string;
}

/** Whether it pays, how sure that is and what would change it, above all else. */
export function Verdict(props: VerdictProps): JSX.Element {
  const phrase = createMemo(() => {
    const [odds, closest] = [props.studies.odds(), props.studies.closest()];
    if (odds === undefined || closest === undefined) return undefined;
    return verdictPhrase({ odds, closest }, props.made, props.nameOf, localFormat);
  });
  return (
    <LiveText>
      <Show
        when={phrase()}
        fallback={
          <WaitingOr class="verdict quiet" reason={props.studies.broken()}>
            {hangsOnTexts.looking}
          </WaitingOr>
        }>
        {(said) => (
          <p class="verdict">
            <Sentence phrase={said()} />
          </p>
        )}
      </Show>
    </LiveText>
  );
}
