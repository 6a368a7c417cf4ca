import { createMemo, For, Show, type Accessor, type JSX } from 'solid-js';
import type { Cell } from '../../../model/cell';
import { oddsRows, oddsSentences, oddsTable, tooFewSentence, type OddsContext } from '../../../present/allPlans/odds';
import { bestWay, namedPlans } from '../../../present/allPlans/plans';
import { allPlansTexts } from '../../../present/allPlans/texts';
import { commonTexts } from '../../../present/text/commonTexts';
import { printedUnit } from '../../../present/text/printedUnit';
import { createFollowingJob, type JobQuestion } from '../../app/jobs/createJob';
import { localFormat } from '../../app/preferences/localFormat';
import type { ScreenProps } from '../../app/screenProps';
import { MethodLink } from '../../kit/method/MethodLink';
import { PlanLetter } from '../../kit/PlanLetter';
import { createRiskSettings } from '../../kit/risk/settings';
import { LiveText } from '../../kit/sections/LiveText';
import { WaitingOr } from '../../kit/sections/WaitingOr';
import { Sentence } from '../../kit/sections/Sentence';
import { TableRoom } from '../../kit/tables/TableRoom';

interface PlanOddsProps extends ScreenProps {
  readonly result: Cell;
  /** Indices of the two plans compared, A first. */
  readonly compared: readonly number[];
  readonly inSight: Accessor<boolean>;
}

/** How often each plan of the model is the best of all, in as many draws as are made of the two compared. */
export function PlanOddsView(props: PlanOddsProps): JSX.Element {
  const settings = createRiskSettings(
    () => props.choice,
    () => props.result.name,
  );
  const numbers = createMemo(() => props.store.values().map((values) => values.numbers[props.result.id]));
  const counted = createMemo(
    () => numbers().flatMap((number, plan) => (number?.isFinite() === true ? [plan] : [])),
    undefined,
    { equals: (a, b) => a.join() === b.join() },
  );
  const question = createMemo((): JobQuestion<'plan odds'> => ({
    sheet: props.store.model().sheet,
    request: {
      result: props.result.id,
      plans: counted(),
      way: bestWay(props.result),
      draws: settings.draws(),
      seed: settings.seed(),
    },
  }));
  const job = createFollowingJob(
    'plan odds',
    () => question(),
    () => props.inSight(),
  );
  const matter = createMemo((): OddsContext | undefined => {
    const { found, of } = job.state();
    const { request } = question();
    // After an edit the odds before stay until new ones arrive.
    const fits = of?.request.result === request.result && of.request.plans.join() === request.plans.join();
    if (found === undefined || !fits) return undefined;
    const plans = namedPlans(props.store.shape(), props.compared);
    const isCounted = (p: number): boolean => request.plans.includes(p);
    return {
      result: props.result,
      way: request.way,
      plans: plans.filter((_plan, p) => isCounted(p)),
      leftOut: plans.filter((_plan, p) => !isCounted(p)),
      odds: found,
    };
  });
  return (
    <>
      <Show
        when={matter()}
        fallback={<NoOdds result={props.result} few={counted().length < 2} reason={job.state().reason} />}>
        {(known) => <Odds matter={known()} />}
      </Show>
      <MethodLink choice={props.choice} entry="plan odds" />
    </>
  );
}

/** What stands there until odds are known, or where there are none. */
function NoOdds(props: { result: Cell; few: boolean; reason: string }): JSX.Element {
  return (
    <Show
      when={props.few}
      fallback={
        <WaitingOr class="quiet wait" reason={props.reason}>
          {commonTexts.working}
        </WaitingOr>
      }>
      <p class="quiet">
        <Sentence phrase={tooFewSentence(props.result)} />
      </p>
    </Show>
  );
}

function Odds(props: { matter: OddsContext }): JSX.Element {
  const words = createMemo(() => oddsSentences(props.matter));
  const rows = createMemo(() => (props.matter.odds.certain ? [] : oddsRows(props.matter, localFormat)));
  const mean = (): string => [allPlansTexts.mean, printedUnit(props.matter.result.unitText)].filter(Boolean).join(', ');
  return (
    <>
      <LiveText>
        <p>
          <Sentence phrase={words().main} />
        </p>
        <Show when={words().more.length > 0}>
          <p class="quiet">
            <Sentence phrase={words().more} />
          </p>
        </Show>
      </LiveText>
      <Show when={rows().length > 0}>
        <TableRoom label={allPlansTexts.oddsRegion} table={() => oddsTable(rows(), props.matter)}>
          <thead>
            <tr>
              <th scope="col" class="words">
                {allPlansTexts.plan}
              </th>
              <th scope="col">{allPlansTexts.often}</th>
              <th scope="col">{mean()}</th>
            </tr>
          </thead>
          <tbody>
            <For each={rows()}>
              {(row) => (
                <tr>
                  <th scope="row" class="words">
                    <PlanLetter letter={row.plan.letter} />
                    <bdi>{row.plan.name}</bdi>
                  </th>
                  <td>{row.often}</td>
                  <td>{row.mean}</td>
                </tr>
              )}
            </For>
          </tbody>
        </TableRoom>
      </Show>
    </>
  );
}
