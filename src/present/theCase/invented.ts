import type { Model } from '../../model/model';

const invented = /\binvent/i;

/** A notice that the figures are invented, where the model's title, notes or sources say so; blank elsewhere. */
export function inventedNotice({ title, lines, cells }: Pick<Model, 'title' | 'lines' | 'cells'>): string {
  const about = lines.find(({ kind }) => kind === 'text');
  if (invented.test(title) || (about?.kind === 'text' && invented.test(about.note))) {
    return 'Figures of an invented farm: the model says so itself. They show how a case is made and decide nothing.';
  }
  const count = cells.filter(({ source, note }) => invented.test(source) || invented.test(note)).length;
  if (count === 0) return '';
  return `${count === 1 ? 'One entry says' : `${count} entries say`} in a source or note that a figure is invented.`;
}
