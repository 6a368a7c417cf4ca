import { createResource, Show, type JSX } from 'solid-js';
import { frameTexts } from '../../present/page/frameTexts';
import { begin, type Kept } from '../app/shelf/beginning';
import { Page } from './Page';

/** The whole page. */
export function App(props: { shelf: Kept }): JSX.Element {
  const [beginning] = createResource(() => begin(props.shelf));
  return (
    <Show
      when={beginning()}
      fallback={
        <p class="busy" role="status">
          {frameTexts.opening}
        </p>
      }>
      {(ready) => <Page beginning={ready()} shelf={props.shelf} />}
    </Show>
  );
}
