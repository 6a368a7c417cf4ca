import { createResource, Show, type JSX } from 'solid-js';
import { frameTexts } from '../../present/page/frameTexts';
import { begin } from '../app/storage/beginning';
import type { BrowserStorage } from '../app/storage/browserStorage';
import { Page } from './Page';

/** The whole page. */
export function App(props: { storage: BrowserStorage }): JSX.Element {
  const [beginning] = createResource(() => begin(props.storage));
  return (
    <Show
      when={beginning()}
      fallback={
        <p class="busy" role="status">
          {frameTexts.opening}
        </p>
      }>
      {(ready) => <Page beginning={ready()} storage={props.storage} />}
    </Show>
  );
}
