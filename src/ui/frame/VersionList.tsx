import { createResource, For, Show, type JSX } from 'solid-js';
import { versionTexts } from '../../present/page/versionTexts';
import { shelfTexts } from '../../present/page/shelfTexts';
import { localMoment } from '../app/preferences/localMoment';
import { storageFault } from '../app/shelf/storageFault';
import type { ShelfDatabase } from '../app/shelf/database';
import { listVersions, type ListedVersion, type State } from '../app/shelf/versionList';

interface VersionListProps {
  readonly database: ShelfDatabase;
  readonly id: string;
  /** The model's title. */
  readonly title: string;
  /** Whether another page has the model open, so that it cannot go back here. */
  readonly isElsewhere: boolean;
  readonly onGoBack: (state: State) => void;
}

/** The versions of a model, each with what changed and a way back to it. */
export function VersionList(props: VersionListProps): JSX.Element {
  const [list] = createResource(
    () => ({ database: props.database, id: props.id }),
    ({ database, id }) => listVersions(database, id),
  );
  const when = ({ state }: ListedVersion): string => localMoment(state.at);
  return (
    <section class="versions" aria-label={versionTexts.each(props.title)}>
      <p class="quiet">{props.isElsewhere ? versionTexts.onlyThere : versionTexts.about}</p>
      <Show when={list.error as unknown}>
        {(reason) => (
          <p class="message fault" role="alert">
            {shelfTexts.notRead(storageFault(reason()))}
          </p>
        )}
      </Show>
      <ol>
        <For each={list.error === undefined ? list() : []}>
          {(version) => (
            <li>
              <span>{when(version)}</span>{' '}
              <span class="quiet">{version.number === 0 ? versionTexts.opened : version.changed}</span>{' '}
              <Show when={!props.isElsewhere}>
                <button
                  type="button"
                  class="word"
                  aria-label={versionTexts.goBackFrom(when(version))}
                  onClick={() => props.onGoBack(version.state)}>
                  {versionTexts.goBack}
                </button>
              </Show>
            </li>
          )}
        </For>
      </ol>
    </section>
  );
}
