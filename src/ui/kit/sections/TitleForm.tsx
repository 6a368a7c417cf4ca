import { createSignal, onMount, type JSX } from 'solid-js';
import { withTitle } from '../../../model/change/title';
import { titleTexts } from '../../../present/page/titleTexts';
import { usePage } from '../../app/pageContext';

interface TitleFormProps {
  readonly title: string;
  readonly about: string;
  readonly onClose: () => void;
}

/** The title and what the model is about, as fields in their place. */
export function TitleForm(props: TitleFormProps): JSX.Element {
  const { store } = usePage();
  // The fields begin with what stands there now.
  // eslint-disable-next-line solid/reactivity
  const [texts, setTexts] = createSignal({ title: props.title, about: props.about });
  let first: HTMLInputElement | undefined;
  onMount(() => first?.focus());
  const finish = (): void => {
    store.replace(withTitle(store.model().sheet, texts(), store.origin().file.sheet));
    props.onClose();
  };
  return (
    <form
      class="title-form"
      onSubmit={(event) => {
        event.preventDefault();
        finish();
      }}
      onKeyDown={(event) => {
        if (event.key === 'Escape') props.onClose();
      }}>
      <label>
        <span>{titleTexts.title}</span>
        <input
          type="text"
          dir="auto"
          ref={(input) => {
            first = input;
          }}
          value={texts().title}
          onInput={(event) => setTexts({ ...texts(), title: event.currentTarget.value })}
        />
      </label>
      <label>
        <span>{titleTexts.whatItIs}</span>
        <textarea
          rows="3"
          dir="auto"
          value={texts().about}
          onInput={(event) => setTexts({ ...texts(), about: event.currentTarget.value })}
        />
      </label>
      <p>
        <button type="submit" class="word">
          {titleTexts.done}
        </button>{' '}
        <button type="button" class="word" onClick={() => props.onClose()}>
          {titleTexts.leave}
        </button>
      </p>
    </form>
  );
}
