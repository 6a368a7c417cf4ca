import { createResource, Show, type JSX } from 'solid-js';
import { frameTexts } from '../../present/page/frameTexts';
import { JobRunnerContext } from '../app/jobs/jobRunner';
import { laterRunner } from '../app/jobs/laterRunner';
import { begin, type Kept } from '../app/shelf/beginning';
import { nextTurn } from '../app/turns/slice';
import { Page } from './Page';

/** The whole page. */
export function App(props: { shelf: Kept }): JSX.Element {
  const [beginning] = createResource(async () => {
    const ready = await begin(props.shelf);
    await nextTurn();
    return ready;
  });
  return (
    <Show when={beginning()} fallback={<Opening />}>
      {(ready) => (
        <JobRunnerContext.Provider value={laterRunner}>
          <Page beginning={ready()} shelf={props.shelf} />
        </JobRunnerContext.Provider>
      )}
    </Show>
  );
}

/** What stands until the model is there: it goes on from what index.html holds. */
function Opening(): JSX.Element {
  return (
    <>
      <header class="top-bar">
        <p class="wordmark">{frameTexts.program}</p>
      </header>
      <p class="about-page">{frameTexts.about}</p>
      <p class="busy" role="status">
        {frameTexts.opening}
      </p>
    </>
  );
}
