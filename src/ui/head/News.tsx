import { Show, type JSX } from 'solid-js';
import type { Desk } from '../desk';
import { Link } from '../words';

/** What became of the last file: opened, saved, being read, or why it could not be opened. */
export function News(props: { desk: Desk; onUndo: () => void }): JSX.Element {
  return (
    <div class="news">
      <div role="status">
        <Show when={props.desk.message()}>
          {(message) => (
            <p class="news-line">
              {message().text}{' '}
              <Show when={message().undoable()}>
                <Link
                  onPress={() => {
                    props.onUndo();
                    props.desk.dismiss();
                  }}>
                  Undo it
                </Link>{' '}
              </Show>
              <Link onPress={() => props.desk.dismiss()}>Close</Link>
            </p>
          )}
        </Show>
        <Show when={props.desk.offer()}>
          {(offer) => (
            <p class="news-line">
              {offer().what} takes the place of {offer().instead}, in which you have changed something: save that as a
              file first if you need it. <Link onPress={() => offer().open()}>Open it</Link>{' '}
              <Link onPress={() => props.desk.dismiss()}>Keep mine</Link>
            </p>
          )}
        </Show>
        <Show when={props.desk.reading()}>
          {(reading) => (
            <p class="news-line">
              {reading().share < 1 ? 'Reading' : 'Checking'} {reading().name}{' '}
              <progress max="1" value={reading().share} aria-label={`Reading ${reading().name}`} />{' '}
              <Link onPress={() => props.desk.stop()}>Stop</Link>
            </p>
          )}
        </Show>
      </div>
      <div role="alert">
        <Show when={props.desk.refusal()}>
          {(refusal) => (
            <div class="refusal">
              <h2>{refusal().name} was not opened</h2>
              <p class="message fault">{refusal().problem.message}</p>
              <p>
                The model that was open is untouched. <Link onPress={() => props.desk.dismiss()}>Close</Link>
              </p>
            </div>
          )}
        </Show>
      </div>
    </div>
  );
}
