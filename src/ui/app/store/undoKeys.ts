import { onCleanup, onMount } from 'solid-js';
import type { ModelStore } from './modelStore';

/** Whether a key press asks for undo or redo. */
export function stepOfKeys({ key, ctrlKey, metaKey, shiftKey, altKey }: KeyboardEvent): 'undo' | 'redo' | undefined {
  if (altKey || !(ctrlKey || metaKey)) return undefined;
  const letter = key.toLowerCase();
  if (letter === 'z') return shiftKey ? 'redo' : 'undo';
  return letter === 'y' && !shiftKey ? 'redo' : undefined;
}

/**
 * Whether a text field keeps its own undo: so for a field that is no part of the model, and for one whose text could
 * not be accepted. In any other field of the model each keystroke is an edit, and the model's undo takes back just what
 * the field's own would.
 */
export function keepsItsKeys(target: EventTarget | null): boolean {
  if (!(target instanceof HTMLInputElement || target instanceof HTMLTextAreaElement)) return false;
  if (target instanceof HTMLInputElement && ['checkbox', 'radio', 'file'].includes(target.type)) return false;
  return target.dataset['modelField'] === undefined || target.getAttribute('aria-invalid') === 'true';
}

/** Listens for the usual undo and redo keys on the whole page. */
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
