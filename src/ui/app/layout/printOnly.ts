/**
 * Prints a part of the page without the rest: the styles look at the mark on the root.
 * @param after what is to be done once it is printed
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
