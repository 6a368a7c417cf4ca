import { createMemo, Show, type JSX } from 'solid-js';
import type { Cell } from '../../../model/cell';
import type { CaseBudget } from '../../../present/theCase/caseOf';
import { closest } from '../../../present/theCase/closest';
import { hangsOnTexts } from '../../../present/theCase/hangsOnTexts';
import { verdictPhrase } from '../../../present/theCase/verdict';
import { localFormat } from '../../app/preferences/localFormat';
import type { ScreenProps } from '../../app/screenProps';
import { LiveText } from '../../kit/sections/LiveText';
import { Sentence } from '../../kit/sections/Sentence';
import type { Studies } from './studies';

interface VerdictProps extends ScreenProps {
  readonly made: CaseBudget;
  readonly studies: Studies;
  readonly nameOf: (cell: Cell) => string;
}

/** Whether it pays, how sure that is and what would change it, above all else. */
export function Verdict(props: VerdictProps): JSX.Element {
  const phrase = createMemo(() => {
    const [odds, switches] = [props.studies.odds(), props.studies.switches()];
    if (odds === undefined || switches === undefined) return undefined;
    const found = { odds, closest: closest(switches, props.store.model(), props.plan) };
    return verdictPhrase(found, props.made, props.nameOf, localFormat);
  });
  return (
    <LiveText>
      <p class="verdict">
        <Show when={phrase()} fallback={<span class="quiet">{props.studies.broken() || hangsOnTexts.looking}</span>}>
          {(said) => <Sentence phrase={said()} />}
        </Show>
      </p>
    </LiveText>
  );
}
