/** Gives the focus to the first field of a form whose text cannot be taken. */
export function focusFault(form: HTMLFormElement): void {
  queueMicrotask(() => form.querySelector<HTMLElement>('[aria-invalid="true"]')?.focus());
}
