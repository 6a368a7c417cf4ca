import { Show, type JSX } from 'solid-js';
import type { FileActions } from '../app/files/fileActions';
import { Link } from '../kit/Link';

/** What became of the last file: opened, saved, being read, or why it could not be opened. */
export function NoticeBar(props: { fileActions: FileActions; onUndo: () => void }): JSX.Element {
  return (
    <div class="news">
      <div role="status">
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
                  Undo it
                </Link>{' '}
              </Show>
              <Link onPress={() => props.fileActions.dismiss()}>Close</Link>
            </p>
          )}
        </Show>
        <Show when={props.fileActions.offer()}>
          {(offer) => (
            <p class="news-line">
              {offer().what} takes the place of {offer().instead}, in which you have changed something: save that as a
              file first if you need it. <Link onPress={() => offer().open()}>Open it</Link>{' '}
              <Link onPress={() => props.fileActions.dismiss()}>Keep mine</Link>
            </p>
          )}
        </Show>
        <Show when={props.fileActions.reading()}>
          {(reading) => (
            <p class="news-line">
              {reading().share < 1 ? 'Reading' : 'Checking'} {reading().name}{' '}
              <progress max="1" value={reading().share} aria-label={`Reading ${reading().name}`} />{' '}
              <Link onPress={() => props.fileActions.stop()}>Stop</Link>
            </p>
          )}
        </Show>
      </div>
      <div role="alert">
        <Show when={props.fileActions.refusal()}>
          {(refusal) => (
            <div class="refusal">
              <h2>{refusal().name} was not opened</h2>
              <p class="message fault">{refusal().problem.message}</p>
              <p>
                The model that was open is untouched. <Link onPress={() => props.fileActions.dismiss()}>Close</Link>
              </p>
            </div>
          )}
        </Show>
      </div>
    </div>
  );
}
