import type { Switch } from '../../../present/whatMatters/switching/switchingInput';
import { createEffect, createMemo, type Accessor } from 'solid-js';
import { decimal } from '../../../core/number';
import { createRiskClient } from '../../kit/risk/client';
import type { DrawsRequest, DrawsFound } from '../../../present/howSure/reply';
import { createRiskSettings } from '../../kit/risk/settings';
import { createSwitchClient } from '../../kit/risk/switchClient';
import { readSwitches, type SwitchRequest } from '../../../jobs/switchSearch';
import type { ScreenProps } from '../../app/screenProps';
import type { WithNetChange } from '../../../present/theCase/netChange';
import { hangsOnTexts } from '../../../present/theCase/hangsOnTexts';

/** What studies of the net change have found for the numbers as they stand now. */
export interface Studies {
  /** Where each input turns the answer, thinnest margin first. */
  readonly switches: Accessor<readonly Switch[] | undefined>;
  readonly odds: Accessor<DrawsFound | undefined>;
  /** Why one of them ended early; blank while all is well. */
  readonly broken: Accessor<string>;
  /** Whether nothing more is to come. */
  readonly settled: Accessor<boolean>;
}

type Of = Pick<ScreenProps, 'store' | 'choice' | 'plan' | 'against'>;

/** More draws would not change what is told, and a person waits for these. */
const mostDraws = 100_000;

function sameSwitchAsk(a: SwitchRequest, b: SwitchRequest): boolean {
  return a.sheet === b.sheet && a.subject.plan === b.subject.plan && a.subject.against === b.subject.against;
}

/** Draws in their worker, without what else How sure works out of them. */
function createOdds(
  wanted: Accessor<DrawsRequest>,
  wake: Accessor<boolean>,
): Pick<Studies, 'odds' | 'broken' | 'settled'> {
  const client = createRiskClient();
  let asked: DrawsRequest | undefined;
  createEffect(() => {
    const ask = wanted();
    if (!wake() || ask === asked) return;
    asked = ask;
    client.ask(ask);
  });
  createEffect(() => {
    const { state, phase } = client.shown();
    if (state === 'busy' && phase === 'drivers') client.stop();
  });
  const isNewest = (): boolean => client.shown().state !== 'busy' && client.shown().of === wanted();
  return {
    odds: () => (isNewest() ? client.shown().found : undefined),
    broken: () => client.shown().reason,
    settled: () => isNewest() || client.shown().state === 'failed',
  };
}

/**
 * @param asked undefined where there is nothing to study: nobody looks then
 * @param wake whether anyone looks: what nobody looks at is not searched
 */
export function createStudies(of: Of, asked: Accessor<WithNetChange | undefined>, wake: Accessor<boolean>): Studies {
  const settings = createRiskSettings(
    () => of.choice,
    () => 'the case',
  );
  const sought = createMemo(
    (): SwitchRequest => ({
      sheet: asked()?.sheet ?? of.store.model().sheet,
      subject: { result: asked()?.result ?? -1, plan: of.plan, against: of.against },
      target: '0',
    }),
    undefined,
    { equals: sameSwitchAsk },
  );
  const search = createSwitchClient(() => sought(), wake);
  const drawn = createMemo((): DrawsRequest => ({
    ...sought(),
    beside: undefined,
    draws: Math.min(settings.draws(), mostDraws),
    seed: settings.seed(),
    target: decimal(sought().target).toNumber(),
  }));
  const odds = createOdds(() => drawn(), wake);
  const switches = createMemo(() => {
    const answered = search.answered();
    return answered?.of === sought() ? readSwitches(answered.reply, of.store.model().cells) : undefined;
  });
  return {
    switches,
    odds: odds.odds,
    broken: () => (search.broken() ? hangsOnTexts.searchEnded : odds.broken()),
    settled: () => (switches() !== undefined || search.broken()) && odds.settled(),
  };
}
