import { createMemo, createSignal, For, Show, type JSX } from 'solid-js';
import type { Suggestion } from '../../../../trade/suggestions';
import { Sentence } from '../../../kit/sections/Sentence';
import type { Phrase } from '../../../../present/text/phrase';
import { localFormat } from '../../../app/preferences/localFormat';
import type { ModelStore } from '../../../app/store/modelStore';
import { Link } from '../../../kit/Link';
import type { PlanSchedule } from '../../../../present/beds/planSchedule';
import { fewSuggestions, partOf, suggestionSentence } from '../../../../present/beds/suggestions/suggestions';
import { movesFor, movesSentence, offers, type SuggestionOffer } from '../../../../present/beds/suggestions/moves';
import { suggestionTexts } from '../../../../present/beds/suggestions/texts';
import { commonTexts } from '../../../../present/text/commonTexts';

export interface SuggestionsProps {
  readonly suggested: readonly Suggestion[];
  readonly planSchedule: PlanSchedule;
  readonly store: ModelStore;
  /** Index of the plan whose schedule it is. */
  readonly plan: number;
  readonly goTo: (cell: number) => void;
}

/** A suggestion that was tried; it is forgotten with the next edit. */
interface Tried {
  readonly sentence: Phrase;
  readonly version: number;
}

/** Changes that finish more plants, each with a button that tries it; those within all ranges come first. */
export function Suggestions(props: SuggestionsProps): JSX.Element {
  const [tried, setTried] = createSignal<Tried>();
  const few = createMemo((): SuggestionOffer[] => {
    const model = props.store.shape();
    const plan = model.plans[props.plan];
    return plan === undefined
      ? []
      : fewSuggestions(offers(model, plan, props.planSchedule.parts, props.suggested, localFormat));
  });
  const tryOut = (suggestion: Suggestion): void => {
    const model = props.store.model();
    const plan = model.plans[props.plan];
    const found = plan && movesFor(model, plan, props.planSchedule.parts, suggestion.change);
    if (plan === undefined || found === undefined) return;
    props.store.finish();
    for (const { edit } of found) props.store.enter(edit);
    props.store.finish();
    setTried({ sentence: movesSentence(found, plan.name, localFormat), version: props.store.version() });
  };
  const standing = (): Tried | undefined => (tried()?.version === props.store.version() ? tried() : undefined);
  return (
    <>
      <div class="tried" role="status">
        <Show when={standing()} keyed>
          {({ sentence }) => <TriedMoves sentence={sentence} onTakeBack={() => props.store.undo()} />}
        </Show>
      </div>
      <Show when={few().length > 0} fallback={<p>{suggestionTexts.none}</p>}>
        <h4>{suggestionTexts.heading}</h4>
        <ul class="suggested">
          <For each={few()}>
            {(suggestion) => (
              <li>
                <Sentence phrase={suggestionSentence(suggestion, props.planSchedule, suggestion.beyond, localFormat)} />{' '}
                <Show when={suggestion.moves} fallback={<ToEntry {...props} suggestion={suggestion} />}>
                  <button type="button" class="link" onClick={() => tryOut(suggestion)}>
                    {suggestionTexts.tryIt}
                  </button>
                </Show>
              </li>
            )}
          </For>
        </ul>
        <p class="quiet">{suggestionTexts.scope}</p>
      </Show>
    </>
  );
}

/** What was tried, and a button that takes it back and has the focus. */
function TriedMoves(props: { sentence: Phrase; onTakeBack: () => void }): JSX.Element {
  return (
    <p>
      <Sentence phrase={props.sentence} />{' '}
      <button
        type="button"
        class="link"
        ref={(button) => queueMicrotask(() => button.focus())}
        onClick={() => props.onTakeBack()}>
        {commonTexts.takeBack}
      </button>
    </p>
  );
}

function ToEntry(props: SuggestionsProps & { suggestion: Suggestion }): JSX.Element {
  return (
    <Show when={props.planSchedule.parts.get(partOf(props.suggestion.change))}>
      {(cell) => <Link onPress={() => props.goTo(cell().id)}>{commonTexts.goTo(cell().label)}</Link>}
    </Show>
  );
}
