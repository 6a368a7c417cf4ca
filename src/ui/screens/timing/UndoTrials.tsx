import { Show, type JSX } from 'solid-js';
import { keepFocus } from '../../kit/keepFocus';
import type { KeptTrials } from './keptTrials';
import { atStart } from '../../../present/timing/sentences';
import { commonTexts } from '../../../present/text/commonTexts';

/** What the last change of the trials did, with a button that takes it back, and what could not be done. */
export function UndoTrials(props: { kept: KeptTrials }): JSX.Element {
  return (
    <>
      <div class="timing-back" role="status">
        <Show when={props.kept.wayBack()} keyed>
          {(sentence) => (
            <p>
              {sentence}{' '}
              <button type="button" class="link" ref={keepFocus} onClick={() => props.kept.takeBack()}>
                {commonTexts.takeBack}
              </button>
            </p>
          )}
        </Show>
      </div>
      <Show when={props.kept.refusal()}>
        {(refusal) => (
          <p class="message fault" role="alert">
            {atStart(refusal())}
          </p>
        )}
      </Show>
    </>
  );
}
