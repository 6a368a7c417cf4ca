/** Prints this screen, or its work list only, without the numbers: the styles look at the mark on the root. */
export function printOnly(part: 'beds' | 'work'): void {
  const root = document.documentElement;
  root.dataset['printed'] = part;
  addEventListener('afterprint', () => delete root.dataset['printed'], { once: true });
  print();
}
