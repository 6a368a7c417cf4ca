import { For, Show, type JSX } from 'solid-js';
import { localFormat } from '../../app/preferences/localFormat';
import { longest, preparedLine, type OwnWords, type WordPart } from './ownWords';

const lines: readonly { readonly part: WordPart; readonly label: string }[] = [
  { part: 'by', label: 'Prepared by' },
  { part: 'for', label: 'for' },
  { part: 'date', label: 'date' },
];

/** A person's own words: fields on the screen, plain text on paper. */
export function OwnWordsView(props: { words: OwnWords }): JSX.Element {
  const text = (): string => props.words.text('words');
  const written = (length: number): string => localFormat.written(String(length));
  const limit = (): string =>
    text() === ''
      ? `Printed below the finding. Up to ${written(longest.words)} characters.`
      : `${written(text().length)} of ${written(longest.words)} characters. Printed below the finding.`;
  return (
    <div class="own-words">
      <div class="writing">
        <label for="case-words">In your own words</label>
        <div class="grows" data-text={text()}>
          <textarea
            id="case-words"
            rows="2"
            maxlength={longest.words}
            aria-describedby="case-words-limit"
            placeholder="Why now, what it asks of whom, what you ask for"
            value={text()}
            onInput={(event) => props.words.write('words', event.currentTarget.value)}
          />
        </div>
        <p class="quiet" id="case-words-limit">
          {limit()}
        </p>
        <div class="prepared">
          <For each={lines}>
            {({ part, label }) => (
              <label>
                <span>{label}</span>
                <input
                  type="text"
                  maxlength={longest[part]}
                  value={props.words.text(part)}
                  autocomplete="off"
                  onInput={(event) => props.words.write(part, event.currentTarget.value)}
                />
              </label>
            )}
          </For>
        </div>
      </div>
      <Show when={text().trim()}>{(said) => <p class="on-paper said-in-words">{said()}</p>}</Show>
      <Show when={preparedLine(props.words)}>{(said) => <p class="on-paper prepared-line">{said()}</p>}</Show>
    </div>
  );
}
