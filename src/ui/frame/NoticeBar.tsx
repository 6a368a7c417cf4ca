import { For, Show, type JSX } from 'solid-js';
import { fileTexts, progressText } from '../../present/page/fileTexts';
import type { FileActions } from '../app/files/fileActions';
import { Link } from '../kit/Link';
import { commonTexts } from '../../present/text/commonTexts';
import type { Keeper } from '../app/shelf/keeper';
import { VersionNotice } from './VersionNotice';

interface NoticeBarProps {
  readonly fileActions: FileActions;
  readonly keeper: Keeper;
  readonly onUndo: () => void;
}

/** Notices about versions of the program, and about a file that is being read, was opened or saved, or was refused. */
export function NoticeBar(props: NoticeBarProps): JSX.Element {
  return (
    <div class="news">
      <div role="status">
        <VersionNotice keeper={props.keeper} />
        <Show when={props.fileActions.message()}>
          {(message) => (
            <p class="news-line">
              {message().text}{' '}
              <Show when={message().undoable()}>
                <Link
                  onPress={() => {
                    props.onUndo();
                    props.fileActions.dismiss();
                  }}>
                  {fileTexts.undoIt}
                </Link>{' '}
              </Show>
              <Link onPress={() => props.fileActions.dismiss()}>{fileTexts.close}</Link>
            </p>
          )}
        </Show>
        <Show when={props.fileActions.offer()}>
          {(offer) => (
            <p class="news-line">
              {offer().text} <Link onPress={() => offer().open()}>{fileTexts.openIt}</Link>{' '}
              <Link onPress={() => props.fileActions.dismiss()}>{commonTexts.keepMine}</Link>
            </p>
          )}
        </Show>
        <Show when={props.fileActions.reading()}>
          {(reading) => (
            <p class="news-line">
              {progressText(reading())}{' '}
              <progress max="1" value={reading().share} aria-label={fileTexts.reading(reading().name)} />{' '}
              <Link onPress={() => props.fileActions.stop()}>{commonTexts.stop}</Link>
            </p>
          )}
        </Show>
      </div>
      <div role="alert">
        <Show when={props.fileActions.refusal()}>
          {(refusal) => (
            <div class="refusal">
              <h2>{refusal().heading}</h2>
              <For each={refusal().messages}>{(message) => <p class="message fault">{message}</p>}</For>
              <p>
                {refusal().open} <Link onPress={() => props.fileActions.dismiss()}>{fileTexts.close}</Link>
              </p>
            </div>
          )}
        </Show>
      </div>
    </div>
  );
}
