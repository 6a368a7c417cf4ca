import { createSignal, For, Show, type JSX } from 'solid-js';
import { spokenLanguage } from '../../language/language';
import { commandTexts } from '../../present/page/commandTexts';
import { rememberLanguage } from '../app/language/chosenLanguage';
import { languageNames, languages, writtenIn } from '../app/language/languages';

/** The choice of the page's language. The page loads anew in it, with the work as it stands. */
export function LanguageChoice(): JSX.Element {
  const [refused, setRefused] = createSignal(false);
  const spoken = spokenLanguage()?.tag ?? writtenIn;
  const choose = (select: HTMLSelectElement): void => {
    if (rememberLanguage(select.value)) {
      location.reload();
    } else {
      select.value = spoken;
      setRefused(true);
    }
  };
  return (
    <div class="language">
      <label>
        <span class="heard">{commandTexts.language}</span>
        <select class="word" onChange={(event) => choose(event.currentTarget)}>
          <For each={languages}>
            {(tag) => (
              <option value={tag} lang={tag} selected={tag === spoken}>
                {languageNames[tag]}
              </option>
            )}
          </For>
        </select>
      </label>
      <Show when={refused()}>
        <span class="quiet" role="status">
          {commandTexts.languageNotKept}
        </span>
      </Show>
    </div>
  );
}
