/**
 * Prints one part of the page; style sheets read the part from `data-printed` on the root element.
 * @param after is called after printing
 */
export function printOnly(part: 'beds' | 'work' | 'lesson' | 'case', after?: () => void): void {
  const root = document.documentElement;
  root.dataset['printed'] = part;
  const done = (): void => {
    delete root.dataset['printed'];
    after?.();
  };
  addEventListener('afterprint', done, { once: true });
  print();
}
