import { For, Show, type JSX } from 'solid-js';
import { usePage } from '../../app/pageContext';
import { localFormat } from '../../app/preferences/localFormat';
import { longest, type OwnWords } from './ownWords';
import { limitText, ownWordsTexts, preparedLine } from '../../../present/theCase/ownWordsTexts';

/** The texts that stand in one line below the person's words. */
const preparedParts = ['by', 'for', 'date'] as const;

/** A person's own words: fields on the screen, plain text on paper and in a case that somebody was sent. */
export function OwnWordsView(props: { words: OwnWords }): JSX.Element {
  const { isSent } = usePage();
  const text = (): string => props.words.text('words');
  return (
    <div class="own-words" classList={{ sent: isSent }}>
      <Show when={!isSent}>
        <OwnWordsFields {...props} />
      </Show>
      <Show when={text().trim()}>{(said) => <p class="on-paper said-in-words">{said()}</p>}</Show>
      <Show when={preparedLine(props.words)}>{(said) => <p class="on-paper prepared-line">{said()}</p>}</Show>
    </div>
  );
}

function OwnWordsFields(props: { words: OwnWords }): JSX.Element {
  const text = (): string => props.words.text('words');
  return (
    <div class="writing">
      <label for="case-words">{ownWordsTexts.label}</label>
      <div class="grows" data-text={text()}>
        <textarea
          id="case-words"
          rows="2"
          maxlength={longest.words}
          aria-describedby="case-words-limit"
          placeholder={ownWordsTexts.placeholder}
          value={text()}
          onInput={(event) => props.words.write('words', event.currentTarget.value)}
        />
      </div>
      <p class="quiet" id="case-words-limit">
        {limitText(text().length, longest.words, localFormat)}
      </p>
      <div class="prepared">
        <For each={preparedParts}>
          {(part) => (
            <label>
              <span>{ownWordsTexts[part]}</span>
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
  );
}
