import { createMemo, Show, type JSX } from 'solid-js';
import type { LiveCase } from '../../files/live/liveCase';
import { liveTexts, madeLine } from '../../present/live/liveTexts';
import { frameTexts } from '../../present/page/frameTexts';
import { createDates } from '../../present/text/dates';
import { budgetTexts } from '../../present/theCase/budgetTexts';
import { caseOf } from '../../present/theCase/caseOf';
import { signedAmount } from '../../present/theCase/rounded';
import { readIsoDate } from '../../trade/civilDate';
import { JobRunnerContext } from '../app/jobs/jobRunner';
import { PageContext, usePage } from '../app/pageContext';
import { localFormat } from '../app/preferences/localFormat';
import { createScheme } from '../app/preferences/scheme';
import { createFootLine } from '../kit/paper/footLine';
import { TitleHeading } from '../kit/sections/TitleHeading';
import { TheCase } from '../screens/theCase/TheCase';
import { createSentState } from './sentState';
import { NumbersToMove } from './NumbersToMove';
import { createSentRows } from './sentRows';
import { turnsRunner } from './turnsRunner';

/** A case that somebody was sent: the case as it stands with these numbers, and the numbers to be moved. */
export function LivePage(props: { live: LiveCase }): JSX.Element {
  // A page is about one case.
  // eslint-disable-next-line solid/reactivity
  const { live } = props;
  const page = createSentState(live);
  createScheme();
  createFootLine();
  const rows = createSentRows(page);
  const { store, choice, compared, navigation } = page;
  return (
    <JobRunnerContext.Provider value={turnsRunner}>
      <PageContext.Provider value={page}>
        <header class="top-bar">
          <p class="wordmark">{frameTexts.program}</p>
          <a class="link to-numbers" href="#numbers-heading">
            {liveTexts.move}
          </a>
        </header>
        <main class="sent-page">
          <Head day={live.day} />
          <div class="halves">
            <div class="case-half">
              <TheCase
                store={store}
                plan={compared.plan()}
                against={compared.against()}
                choice={choice}
                goTo={navigation.goTo}
              />
            </div>
            <div class="side-half">
              <NumbersToMove rows={rows} address={live.address} />
            </div>
          </div>
          <NetNow />
        </main>
      </PageContext.Provider>
    </JobRunnerContext.Provider>
  );
}

function Head(props: { day: string }): JSX.Element {
  const day = (): string => {
    const number = readIsoDate(props.day);
    return number === undefined ? '' : createDates(localFormat.locale).long(number);
  };
  return (
    <div class="title">
      <TitleHeading />
      <p class="quiet">
        {madeLine(day())} {liveTexts.private}
      </p>
    </div>
  );
}

/** The net change where the case is out of sight while a number is typed. */
function NetNow(): JSX.Element {
  const { store, compared } = usePage();
  const text = createMemo(() => {
    const made = caseOf(store.model(), store.values(), compared.plan(), compared.against());
    return made.kind === 'made' ? signedAmount(made.netChange, made, localFormat) : '';
  });
  return (
    <Show when={text()}>
      {(amount) => (
        <p class="net-now">
          {budgetTexts.netChange} <b>{amount()}</b>
        </p>
      )}
    </Show>
  );
}
