/** Takes the focus where what had it is gone from the page. */
export function keepFocus(button: HTMLButtonElement): void {
  queueMicrotask(() => {
    if (document.activeElement === document.body) button.focus();
  });
}
