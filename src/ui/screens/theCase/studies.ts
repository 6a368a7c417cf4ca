import type { Switch } from '../../../present/whatMatters/switching/switchingInput';
import { createMemo, type Accessor } from 'solid-js';
import { decimal } from '../../../core/number';
import type { DrawsFound } from '../../../present/howSure/drawsFound';
import { createFollowingJob, type JobQuestion } from '../../app/jobs/createJob';
import { createRiskSettings } from '../../kit/risk/settings';
import { readSwitches } from '../../../jobs/switchingSearch';
import type { ScreenProps } from '../../app/screenProps';
import type { WithNetChange } from '../../../present/theCase/netChange';
import { closest, type Closest } from '../../../present/theCase/closest';
import { hangsOnTexts } from '../../../present/theCase/hangsOnTexts';

/** What studies of the net change have found for today's numbers. */
export interface Studies {
  /** The switching values, thinnest margin first. */
  readonly switches: Accessor<readonly Switch[] | undefined>;
  /** The inputs among them that change the answer soonest. */
  readonly closest: Accessor<Closest | undefined>;
  readonly odds: Accessor<DrawsFound | undefined>;
  /** Why a study failed; blank where none did. */
  readonly broken: Accessor<string>;
}

type Of = Pick<ScreenProps, 'store' | 'choice' | 'plan' | 'against'>;

/** More draws would not change the sentence, and a person waits for them. */
const mostDraws = 100_000;

type Sought = JobQuestion<'switching values'>;

function sameSought(a: Sought, b: Sought): boolean {
  const [before, now] = [a.request.subject, b.request.subject];
  return a.sheet === b.sheet && before.plan === now.plan && before.against === now.against;
}

/**
 * @param asked undefined where there is no net change to study
 * @param wake whether the case is in sight; nothing is computed while it is not
 */
export function createStudies(of: Of, asked: Accessor<WithNetChange | undefined>, wake: Accessor<boolean>): Studies {
  const settings = createRiskSettings(
    () => of.choice,
    () => 'the case',
  );
  const sought = createMemo(
    (): Sought => ({
      sheet: asked()?.sheet ?? of.store.model().sheet,
      request: { subject: { result: asked()?.result ?? -1, plan: of.plan, against: of.against }, target: '0' },
    }),
    undefined,
    { equals: sameSought },
  );
  const drawn = createMemo((): JobQuestion<'draws'> => {
    const { sheet, request } = sought();
    const count = Math.min(settings.draws(), mostDraws);
    const target = decimal(request.target).toNumber();
    const { subject } = request;
    return {
      sheet,
      request: { subject, beside: undefined, draws: count, seed: settings.seed(), target, drivers: false, kept: true },
    };
  });
  const search = createFollowingJob('switching values', () => sought(), wake);
  const draws = createFollowingJob('draws', () => drawn(), wake);
  const switches = createMemo(() => {
    const { found, of: question } = search.state();
    return found !== undefined && question === sought() ? readSwitches(found, of.store.model().cells) : undefined;
  });
  const soonest = createMemo(() => {
    const found = switches();
    return found && closest(found, of.store.model(), of.plan);
  });
  const odds = createMemo(() => {
    const { state, found, of: question } = draws.state();
    return state !== 'busy' && question === drawn() ? found : undefined;
  });
  const isBroken = (): boolean => search.state().state === 'failed';
  return {
    switches,
    closest: soonest,
    odds,
    broken: () => (isBroken() ? hangsOnTexts.searchEnded : draws.state().reason),
  };
}
