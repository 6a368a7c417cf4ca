import { Show, type JSX } from 'solid-js';
import { commonTexts } from '../../../present/text/commonTexts';
import { keepFocus } from '../../kit/keepFocus';
import { Sentence } from '../../kit/sections/Sentence';
import type { PlanChanges } from './planChanges';

/** What the last change did, where it was made, and how to take it back. */
export function DoneLine(props: { changes: PlanChanges; about: 'plans' | 'number' }): JSX.Element {
  const done = (): ReturnType<PlanChanges['done']> => {
    const last = props.changes.done();
    return last?.about === props.about ? last : undefined;
  };
  let box!: HTMLDivElement;
  /** The way back is gone once it was taken: the focus stays in its part of the screen. */
  const takeBack = (): void => {
    const part = box.closest('section');
    props.changes.takeBack();
    part?.querySelector<HTMLElement>('button, select')?.focus();
  };
  return (
    <div class="plans-done" role="status" ref={box}>
      <Show when={done()} keyed>
        {({ said }) => (
          <p>
            <Sentence phrase={said} />{' '}
            <button type="button" class="link" ref={keepFocus} onClick={takeBack}>
              {commonTexts.takeBack}
            </button>
          </p>
        )}
      </Show>
    </div>
  );
}
