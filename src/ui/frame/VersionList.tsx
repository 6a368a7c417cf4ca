import { createResource, For, Show, type JSX } from 'solid-js';
import { versionTexts } from '../../present/page/versionTexts';
import { shelfTexts } from '../../present/page/shelfTexts';
import { localMoment } from '../app/preferences/localMoment';
import { storageFault } from '../app/shelf/storageFault';
import type { ShelfDatabase } from '../app/shelf/database';
import { listVersions, type ListedVersion, type State } from '../app/shelf/versionList';
import { ownTexts } from '../app/shelf/versions';

interface VersionListProps {
  readonly database: ShelfDatabase;
  readonly id: string;
  /** The model's title. */
  readonly title: string;
  /** Whether another page has the model open, so that it cannot go back here. */
  readonly isElsewhere: boolean;
  /** What is chosen of the model now, with the words of its case and its timed batches. */
  readonly choice: Readonly<Record<string, string>>;
  readonly onGoBack: (state: State, withWords: boolean) => void;
}

function sameTexts(a: Readonly<Record<string, string>>, b: Readonly<Record<string, string>>): boolean {
  return [...Object.keys(a), ...Object.keys(b)].every((key) => a[key] === b[key]);
}

/** The versions of a model, each with what changed and a way back to it. */
export function VersionList(props: VersionListProps): JSX.Element {
  const [list] = createResource(
    () => ({ database: props.database, id: props.id }),
    ({ database, id }) => listVersions(database, id),
  );
  const when = ({ state }: ListedVersion): string => localMoment(state.at);
  const hasOtherWords = ({ state: { own } }: ListedVersion): boolean =>
    own !== undefined && !sameTexts(own, ownTexts(props.choice));
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
                  onClick={() => props.onGoBack(version.state, false)}>
                  {versionTexts.goBack}
                </button>
                <Show when={hasOtherWords(version)}>
                  {' '}
                  <button
                    type="button"
                    class="word"
                    aria-label={versionTexts.withWordsFrom(when(version))}
                    onClick={() => props.onGoBack(version.state, true)}>
                    {versionTexts.withWords}
                  </button>
                </Show>
              </Show>
            </li>
          )}
        </For>
      </ol>
    </section>
  );
}
