import { createMemo, createSignal, Show, type Accessor, type JSX } from 'solid-js';
import type { Cell } from '../../../model/cell';
import { namesAmong } from '../../../present/text/entryNames';
import { WaitingOr } from '../../kit/sections/WaitingOr';
import { Sentence } from '../../kit/sections/Sentence';
import { HeadedTable } from '../../kit/tables/HeadedTable';
import { localFormat } from '../../app/preferences/localFormat';
import type { ModelStore } from '../../app/store/modelStore';
import { MethodLink } from '../../kit/method/MethodLink';
import type { Choice } from '../../app/screenProps';
import { createFollowingJob, type JobQuestion } from '../../app/jobs/createJob';
import { readSwitches } from '../../../jobs/switchingSearch';
import {
  switchLines,
  switchSentence,
  switchTable,
  type SwitchLine,
} from '../../../present/whatMatters/switching/sentences';
import { switchingTexts } from '../../../present/whatMatters/switching/texts';
import './switches.css';

interface SwitchingProps {
  readonly store: ModelStore;
  readonly choice: Choice;
  readonly result: Cell;
  /** The plan, and the plan that is subtracted. */
  readonly plans: readonly [plan: number, less: number | undefined];
  readonly inSight: Accessor<boolean>;
  readonly goTo: (cell: number) => void;
}

/** Rows shown at first. */
const few = 8;

/** Switching values: for every input, how far it may be wrong before the answer changes. */
export function Switching(props: SwitchingProps): JSX.Element {
  const wanted = createMemo((): JobQuestion<'switching values'> => ({
    sheet: props.store.model().sheet,
    request: {
      subject: { result: props.result.id, plan: props.plans[0], against: props.plans[1] },
      target: '0',
    },
  }));
  const search = createFollowingJob(
    'switching values',
    () => wanted(),
    () => props.inSight(),
  );
  const found = createMemo(() => {
    const { found: known, of } = search.state();
    return known !== undefined && of === wanted() ? readSwitches(known, props.store.model().cells) : undefined;
  });
  const nameOf = createMemo(() => namesAmong(props.store.shape().cells));
  return (
    <>
      <Show
        when={found()}
        fallback={
          <WaitingOr reason={search.state().state === 'failed' ? switchingTexts.broken : ''}>
            {switchingTexts.looking}
          </WaitingOr>
        }>
        {(all) => (
          <>
            <p class="finding">
              <Sentence phrase={switchSentence(all(), nameOf(), localFormat)} />
            </p>
            <Lines found={switchLines(all(), nameOf(), localFormat)} goTo={props.goTo} />
          </>
        )}
      </Show>
      <MethodLink choice={props.choice} entry="switching" />
    </>
  );
}

interface LinesProps {
  readonly found: readonly SwitchLine[];
  readonly goTo: (cell: number) => void;
}

function Lines(props: LinesProps): JSX.Element {
  const [all, setAll] = createSignal(false);
  const shown = (): readonly SwitchLine[] => (all() ? props.found : props.found.slice(0, few));
  return (
    <>
      <HeadedTable
        label={switchingTexts.tableRegion}
        table={switchTable(shown())}
        goTo={(row) => props.goTo(shown()[row]!.cell.id)}
      />
      <Show when={props.found.length > few}>
        <button type="button" class="link more" aria-expanded={all()} onClick={() => setAll(!all())}>
          {all() ? switchingTexts.showThinnest(few) : switchingTexts.showAll(props.found.length)}
        </button>
      </Show>
    </>
  );
}
