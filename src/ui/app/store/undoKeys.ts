import { onCleanup, onMount } from 'solid-js';
import type { ModelStore } from './modelStore';

/** Which step a key press asks for. */
export function stepOfKeys({ key, ctrlKey, metaKey, shiftKey, altKey }: KeyboardEvent): 'undo' | 'redo' | undefined {
  if (altKey || !(ctrlKey || metaKey)) return undefined;
  const letter = key.toLowerCase();
  if (letter === 'z') return shiftKey ? 'redo' : 'undo';
  return letter === 'y' && !shiftKey ? 'redo' : undefined;
}

/**
 * Whether a text field should take the keys itself: one that is no part of the model, and one whose text is not in the
 * model because it could not be accepted. In any other field of the model each keystroke is an edit, so that the
 * model's last step is what the field would take back.
 */
export function keepsItsKeys(target: EventTarget | null): boolean {
  if (!(target instanceof HTMLInputElement || target instanceof HTMLTextAreaElement)) return false;
  if (target instanceof HTMLInputElement && ['checkbox', 'radio', 'file'].includes(target.type)) return false;
  return target.dataset['modelField'] === undefined || target.getAttribute('aria-invalid') === 'true';
}

/** Undo and redo by the usual keys, anywhere on the page. */
export function listenForSteps(store: ModelStore): void {
  const onKeyDown = (event: KeyboardEvent): void => {
    const step = stepOfKeys(event);
    if (step === undefined || keepsItsKeys(event.target)) return;
    event.preventDefault();
    store[step]();
  };
  onMount(() => {
    addEventListener('keydown', onKeyDown);
    onCleanup(() => removeEventListener('keydown', onKeyDown));
  });
}
