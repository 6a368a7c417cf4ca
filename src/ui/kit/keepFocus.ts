/** Focuses a button where the element that had the focus was removed from the page. */
export function keepFocus(button: HTMLButtonElement): void {
  queueMicrotask(() => {
    if (document.activeElement === document.body) button.focus();
  });
}
