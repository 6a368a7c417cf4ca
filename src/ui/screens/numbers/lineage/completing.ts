import { batch, createSignal, type Accessor } from 'solid-js';
import type { Completion, Completions } from '../../../../present/numbers/own/completion';

/** The list of what may take the place of the word at the caret. */
export interface Completing {
  readonly found: Accessor<Completions | undefined>;
  /** The option that the next Enter takes; −1 for none. */
  readonly active: Accessor<number>;
  /** Looks for what fits, after a letter was typed. */
  readonly look: (area: HTMLTextAreaElement) => void;
  readonly take: (area: HTMLTextAreaElement, option: Completion | undefined) => void;
  /** Whether a key was for the list. */
  readonly onKey: (event: KeyboardEvent, area: HTMLTextAreaElement) => boolean;
  readonly close: () => void;
}

/**
 * Puts a text in the place of a part of what stands in a field, as if it were typed: the browser's own undo then takes
 * it back.
 */
function typeInto(area: HTMLTextAreaElement, from: number, to: number, text: string): void {
  area.focus();
  area.setSelectionRange(from, to);
  // No other way keeps the field's own undo.
  // eslint-disable-next-line @typescript-eslint/no-deprecated
  document.execCommand('insertText', false, text);
}

/** The option after or before another, round and round; from none the first or the last. */
function next(before: number, step: number, count: number): number {
  return before < 0 ? (step > 0 ? 0 : count - 1) : (before + step + count) % count;
}

/**
 * Arrow keys choose, Enter or Tab takes, Escape closes the list and leaves the text. Keys with Ctrl, Alt or Command are
 * never for the list.
 */
export function createCompleting(offer: (text: string, caret: number) => Completions | undefined): Completing {
  const [found, setFound] = createSignal<Completions>();
  const [active, setActive] = createSignal(-1);
  let taking = false;
  const close = (): void => {
    setFound(undefined);
  };
  const take = (area: HTMLTextAreaElement, option: Completion | undefined): void => {
    const at = found();
    if (at === undefined || option === undefined) return;
    taking = true;
    typeInto(area, at.from, at.to, option.text);
    taking = false;
    close();
  };
  return {
    found,
    active,
    close,
    take,
    look: (area) => {
      const completions = taking ? undefined : offer(area.value, area.selectionStart);
      batch(() => {
        setFound(completions);
        setActive(completions === undefined || completions.isName ? -1 : 0);
      });
    },
    onKey: (event, area) => {
      const options = found()?.options ?? [];
      if (options.length === 0 || event.ctrlKey || event.metaKey || event.altKey) return false;
      const step = event.key === 'ArrowDown' ? 1 : event.key === 'ArrowUp' ? -1 : 0;
      const isTaken = (event.key === 'Enter' || event.key === 'Tab') && !event.shiftKey && active() >= 0;
      if (step !== 0) setActive((before) => next(before, step, options.length));
      else if (event.key === 'Escape') close();
      else if (isTaken) take(area, options[active()]);
      else return false;
      event.preventDefault();
      return true;
    },
  };
}
