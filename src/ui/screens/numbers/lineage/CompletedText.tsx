import { createUniqueId, For, Show, type JSX } from 'solid-js';
import type { Cell } from '../../../../model/cell';
import { completionsAt, type Completion } from '../../../../present/numbers/own/completion';
import { formulaTexts } from '../../../../present/numbers/own/formulaTexts';
import type { Field } from '../../../app/store/modelField';
import { usePage } from '../../../app/pageContext';
import { createCompleting, type Completing } from './completing';

/** How long, in ms, what stands below a field stays once it is left: what is pressed must not move away. */
const afterPress = 200;

interface CompletedTextProps {
  readonly id: string;
  readonly field: Field;
  readonly cell: Cell;
  /** Whether names of entries and functions are offered. */
  readonly completes: boolean;
  readonly placeholder: string;
  readonly describedBy: string | undefined;
  readonly onFocused: (focused: boolean) => void;
}

/**
 * A text field that offers the names that fit the word at the caret in a list below it. Arrow keys choose, Enter or Tab
 * takes, Escape closes the list and leaves the text. A word that is a name already is left alone by Enter and Tab.
 */
export function CompletedText(props: CompletedTextProps): JSX.Element {
  const { store } = usePage();
  let area: HTMLTextAreaElement | undefined;
  const listId = createUniqueId();
  const list = createCompleting((text, caret) =>
    props.completes ? completionsAt(text, caret, store.shape(), props.cell) : undefined,
  );
  const leave = (): void => {
    if (document.activeElement === area) return;
    list.close();
    props.onFocused(false);
  };
  const optionId = (at: number): string => `${listId}-${at}`;
  return (
    <>
      <textarea
        id={props.id}
        ref={area}
        rows="1"
        spellcheck={false}
        autocomplete="off"
        data-model-field=""
        placeholder={props.placeholder}
        value={props.field.text()}
        aria-invalid={props.field.problem() === undefined ? undefined : 'true'}
        aria-describedby={props.describedBy}
        aria-autocomplete={props.completes ? 'list' : undefined}
        aria-haspopup={props.completes ? 'listbox' : undefined}
        aria-controls={list.found() === undefined ? undefined : listId}
        aria-activedescendant={list.found() === undefined || list.active() < 0 ? undefined : optionId(list.active())}
        onInput={(event) => {
          props.field.onInput(event);
          list.look(event.currentTarget);
        }}
        onFocus={() => {
          props.onFocused(true);
          props.field.onFocus();
        }}
        onBlur={() => {
          setTimeout(leave, afterPress);
          props.field.onBlur();
        }}
        onClick={() => list.close()}
        onKeyDown={(event) => {
          if (list.onKey(event, event.currentTarget)) return;
          if (['ArrowLeft', 'ArrowRight', 'Home', 'End'].includes(event.key)) list.close();
          props.field.onKeyDown(event);
        }}
      />
      <Offered count={list.found()?.options.length ?? 0} />
      <CompletionList
        list={list}
        id={listId}
        optionId={optionId}
        onTake={(option) => area && list.take(area, option)}
      />
    </>
  );
}

/** Says to those who hear the page that a list has come: its field cannot say so itself. */
function Offered(props: { count: number }): JSX.Element {
  return (
    <span class="heard" role="status">
      {props.count === 0 ? '' : formulaTexts.offered(props.count)}
    </span>
  );
}

interface CompletionListProps {
  readonly list: Completing;
  readonly id: string;
  readonly optionId: (at: number) => string;
  readonly onTake: (option: Completion) => void;
}

function CompletionList(props: CompletionListProps): JSX.Element {
  return (
    <Show when={props.list.found()}>
      {(completions) => (
        <ul class="completions" role="listbox" id={props.id} aria-label={formulaTexts.names}>
          <For each={completions().options}>
            {(option, i) => (
              <li
                role="option"
                id={props.optionId(i())}
                aria-selected={i() === props.list.active()}
                onMouseDown={(event) => event.preventDefault()}
                onClick={() => props.onTake(option)}>
                <span class="completion-name">{option.name}</span> <span class="quiet">{option.about}</span>
              </li>
            )}
          </For>
        </ul>
      )}
    </Show>
  );
}
