import { isOwn, sourceParts, standingOf, type Standing } from '../../model/change/sources';
import type { Cell } from '../../model/cell';
import type { Model, Plan } from '../../model/model';
import { field } from '../../model/sheet';
import { leaves } from './ancestry';

/** An input with what its source says of where its figure comes from. */
export interface Figure {
  readonly cell: Cell;
  readonly standing: Standing;
  readonly source: string;
}

/** Inputs with the standing of their figures, in file order. */
export function figuresOf({ sheet }: Pick<Model, 'sheet'>, cells: readonly Cell[]): Figure[] {
  const sources = new Map(sheet.rows.map((row) => [row.row, field(row, 'source')]));
  return cells.map((cell) => {
    const source = sources.get(cell.row) ?? '';
    return { cell, standing: standingOf(source), source };
  });
}

/** The inputs that the headlines of a model are made from in some plans, in file order. */
export function figuresThatMatter(model: Model, plans: readonly Plan[]): Figure[] {
  const results = model.cells.filter(({ role }) => role === 'headline');
  const ids = new Set(results.flatMap(({ id }) => leaves(model, plans, id).map((cell) => cell.id)));
  return figuresOf(
    model,
    model.cells.filter(({ id }) => ids.has(id)),
  );
}

/** Whether a figure is somebody's own by its source, and its range is not. */
export function hasForeignRange(source: string): boolean {
  const [own, from] = sourceParts(source);
  return own !== '' && from !== '';
}

/** Whether a figure is its person's own, more than a guess. */
export function isYours({ standing }: Pick<Figure, 'standing'>): boolean {
  return isOwn(standing) && standing !== 'guess';
}

/** Whether a figure is its person's own beside a range that came with the model. */
export function isYoursInPart(figure: Figure): boolean {
  return isYours(figure) && hasForeignRange(figure.source);
}

/** Figures that nobody has said to be their own or a guess of theirs, and those whose range nobody has. */
export function takenOver(figures: readonly Figure[]): Figure[] {
  return figures.filter((figure) => !isOwn(figure.standing) || isYoursInPart(figure));
}
