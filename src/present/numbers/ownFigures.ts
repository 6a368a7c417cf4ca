import { isNumberText } from '../../core/number';
import { isOwn } from '../../model/change/sources';
import { isInputInAny, type Model, type Plan } from '../../model/model';
import { field } from '../../model/sheet';
import { figurePlaces, type FigurePlace } from './figurePlaces';
import { figuresOf, figuresThatMatter, isYours, isYoursInPart, type Figure } from './standings';

/** Which figures are looked at: those that the headlines are made from, or all. */
export type FigureScope = 'headlines' | 'all';

/** A figure with the places where it stands for something. */
export interface PlacedFigure extends Figure {
  readonly places: readonly FigurePlace[];
}

/**
 * The figures of which somebody can say whose they are: numbers that all plans share, and a plan's own where the file
 * names a source. A number that only says what a plan is, as the 0 days of a stage that it does not have, is none.
 */
export function figuresToOwn(model: Model, plans: readonly Plan[], scope: FigureScope): PlacedFigure[] {
  const shared = new Set(model.sheet.rows.filter((row) => isNumberText(field(row, 'formula'))).map(({ row }) => row));
  const figures =
    scope === 'headlines'
      ? figuresThatMatter(model, plans)
      : figuresOf(
          model,
          model.cells.filter(({ id }) => isInputInAny(plans, id)),
        );
  return figures
    .filter(({ cell, source }) => source !== '' || shared.has(cell.row))
    .map((figure) => ({ ...figure, places: figurePlaces(model, plans, figure.cell) }))
    .filter(({ places }) => places.length > 0);
}

/** Figures by whose they are. */
export interface FigureTally {
  readonly yours: number;
  /** Of these, those whose range came with the model. */
  readonly ranges: number;
  readonly guesses: number;
  /** Neither, with a source. */
  readonly takenOver: number;
  /** Neither, and no source says where they come from. */
  readonly unsourced: number;
}

/** Counts figures by whose they are. */
export function figureTally(figures: readonly Figure[]): FigureTally {
  const count = (is: (figure: Figure) => boolean): number => figures.filter(is).length;
  return {
    yours: count(isYours),
    ranges: count(isYoursInPart),
    guesses: count(({ standing }) => standing === 'guess'),
    takenOver: count(({ standing, source }) => !isOwn(standing) && source !== ''),
    unsourced: count(({ source }) => source === ''),
  };
}
