import { createMemo, createSignal, For, Show, type JSX } from 'solid-js';
import type { Suggestion } from '../../trade/suggestions';
import { Sentence } from '../finding/Sentence';
import type { Phrase } from '../finding/phrase';
import { here } from '../here';
import type { Live } from '../live';
import { Link } from '../words';
import type { Asked } from './asked';
import { fewSuggestions, partOf, suggestionTold } from './suggested';
import { movesFor, movesTold, offers, type Offer } from './tryOut';

export interface SuggestionsProps {
  readonly suggested: readonly Suggestion[];
  readonly asked: Asked;
  readonly live: Live;
  /** Index of the plan that the schedule is of. */
  readonly plan: number;
  readonly goTo: (cell: number) => void;
}

/** What was tried, until anything else is changed. */
interface Tried {
  readonly told: Phrase;
  readonly version: number;
}

/** Changes that finish more, each to be tried by a button: first those that keep within what is held possible. */
export function Suggestions(props: SuggestionsProps): JSX.Element {
  const [tried, setTried] = createSignal<Tried>();
  const few = createMemo((): Offer[] => {
    const model = props.live.shape();
    const plan = model.plans[props.plan];
    return plan === undefined ? [] : fewSuggestions(offers(model, plan, props.asked.parts, props.suggested, here));
  });
  const tryOut = (suggestion: Suggestion): void => {
    const model = props.live.model();
    const plan = model.plans[props.plan];
    const found = plan && movesFor(model, plan, props.asked.parts, suggestion.change);
    if (plan === undefined || found === undefined) return;
    props.live.finish();
    for (const { edit } of found) props.live.edit(edit);
    props.live.finish();
    setTried({ told: movesTold(found, plan.name, here), version: props.live.version() });
  };
  const standing = (): Tried | undefined => (tried()?.version === props.live.version() ? tried() : undefined);
  return (
    <>
      <div class="tried" role="status">
        <Show when={standing()} keyed>
          {({ told }) => <TriedTold told={told} onTakeBack={() => props.live.undo()} />}
        </Show>
      </div>
      <Show
        when={few().length > 0}
        fallback={<p>No other interval, density or half week that was tried finishes more.</p>}>
        <h4>What would help, each by itself</h4>
        <ul class="suggested">
          <For each={few()}>
            {(suggestion) => (
              <li>
                <Sentence phrase={suggestionTold(suggestion, props.asked, suggestion.beyond, here)} />{' '}
                <Show when={suggestion.moves} fallback={<ToEntry {...props} suggestion={suggestion} />}>
                  <button type="button" class="link" onClick={() => tryOut(suggestion)}>
                    Try it
                  </button>
                </Show>
              </li>
            )}
          </For>
        </ul>
        <p class="quiet">
          Counted is room only: what fewer days or more holes do to the plants, their price and the hours is not in it.
          Undo takes a try back.
        </p>
      </Show>
    </>
  );
}

/** What was tried, and the way back, which has the focus. */
function TriedTold(props: { told: Phrase; onTakeBack: () => void }): JSX.Element {
  return (
    <p>
      <Sentence phrase={props.told} />{' '}
      <button
        type="button"
        class="link"
        ref={(button) => queueMicrotask(() => button.focus())}
        onClick={() => props.onTakeBack()}>
        Take it back
      </button>
    </p>
  );
}

function ToEntry(props: SuggestionsProps & { suggestion: Suggestion }): JSX.Element {
  return (
    <Show when={props.asked.parts.get(partOf(props.suggestion.change))}>
      {(cell) => <Link onPress={() => props.goTo(cell().id)}>Go to {cell().label}</Link>}
    </Show>
  );
}
