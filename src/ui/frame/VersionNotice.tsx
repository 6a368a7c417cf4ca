import { Show, type JSX } from 'solid-js';
import { frameTexts } from '../../present/page/frameTexts';
import { updateTexts } from '../../present/page/updateTexts';
import { createVersions } from '../app/offline/versions';
import type { Keeper } from '../app/shelf/keeper';
import { Link } from '../kit/Link';

/** Says that a new version is ready, or that a part of this one is gone, and loads the page again when asked. */
export function VersionNotice(props: { keeper: Keeper }): JSX.Element {
  const versions = createVersions();
  const load = (): void => {
    props.keeper.flush();
    versions.load();
  };
  return (
    <Show when={versions.news()}>
      {(news) => (
        <p class="news-line">
          {updateTexts.said(news(), props.keeper.state().state !== 'failed')}{' '}
          <Link onPress={load}>{news() === 'ready' ? updateTexts.use : frameTexts.loadAgain}</Link>{' '}
          <Link onPress={versions.dismiss}>{updateTexts.later}</Link>
        </p>
      )}
    </Show>
  );
}
