import { wording } from '../../../language/wording';
import { numberToText, type Decimal } from '../../../core/number';
import { parts as sides } from '../../../core/ratio';
import type { Cell } from '../../../model/cell';
import type { CropParts } from '../../../model/cropParts';
import { editIn, type Edit } from '../../../model/edit';
import { reach } from '../../../model/graph';
import { inputBehind } from '../../../model/inputBehind';
import type { Model, Plan } from '../../../model/model';
import type { Change, Suggestion } from '../../../trade/suggestions';
import { plainly, say, sentences, type Phrase } from '../../text/phrase';
import { spoken } from '../../text/spokenNumber';
import { beyondRange } from '../../text/rangeEnds';
import type { Format } from '../../text/numberFormat';
import { partOf } from './suggestions';

/** A new number for an input. */
export interface Move {
  readonly cell: Cell;
  /** In the input's unit. */
  readonly from: Decimal;
  readonly to: Decimal;
  readonly edit: Edit;
  /** The plans that the new number applies to, where the model has several. */
  readonly where: 'one plan' | 'every plan' | 'the only place';
}

/** The parts of the crop schedule that depend on an input in a plan. */
function partsMoved(plan: Plan, input: number, parts: CropParts): Cell[] {
  const moved = reach([input], plan.structure.feeds);
  return [...parts.values()].filter(({ id }) => id === input || moved.has(id));
}

/**
 * The field for a number that only this plan's schedule should take. For an input with a range it is the shared field,
 * as a plan's own number would put the range out of use.
 */
function placed(model: Model, plan: Plan, cell: Cell, parts: CropParts): Pick<Move, 'edit' | 'where'> {
  const usual = editIn(model, plan, cell.id, '');
  const others = model.plans.filter(
    (other) => other !== plan && other.contents[cell.id]?.own === false && partsMoved(other, cell.id, parts).length > 0,
  );
  if (usual.column !== 'formula' || others.length === 0) return { edit: usual, where: 'the only place' };
  if (cell.range !== undefined || plan.column === undefined) return { edit: usual, where: 'every plan' };
  return { edit: { ...usual, column: plan.column }, where: 'one plan' };
}

function moveOf(model: Model, plan: Plan, parts: CropParts, part: string, base: Decimal): Move | undefined {
  const target = parts.get(part);
  const input = target && inputBehind(plan, target.id);
  const cell = input === undefined ? undefined : model.cells[input];
  const content = input === undefined ? undefined : plan.contents[input];
  if (cell?.unit === undefined || content?.kind !== 'input') return undefined;
  if (partsMoved(plan, cell.id, parts).length !== 1) return undefined;
  const { over, under } = sides(cell.unit.scale);
  const to = base.times(under).dividedBy(over);
  const { edit, where } = placed(model, plan, cell, parts);
  return { cell, from: content.number, to, edit: { ...edit, text: numberToText(to) }, where };
}

/**
 * The new numbers of inputs that make a plan's schedule follow a change and change nothing else in it; undefined where
 * a part is not an input's own number.
 */
export function movesFor(model: Model, plan: Plan, parts: CropParts, change: Change): Move[] | undefined {
  const first = moveOf(model, plan, parts, partOf(change), change.to);
  if (first === undefined || change.kind !== 'shift') return first && [first];
  const second = moveOf(model, plan, parts, `stage ${change.from} time`, change.left);
  return second && [first, second];
}

/** A suggestion with the numbers to enter for it. */
export interface SuggestionOffer extends Suggestion {
  /** Undefined where no input's own number brings the change about. */
  readonly moves: readonly Move[] | undefined;
  /** `, outside its range of 8 to 12 weeks` where a new number is outside its input's range. */
  readonly beyond: Phrase;
}

/** Holes are what they are: a density without a range is a decision that boards were bought for. */
function isDecided({ change, moves }: SuggestionOffer): boolean {
  return change.kind === 'density' && moves?.every(({ cell }) => cell.range === undefined) === true;
}

/** Suggestions as they are offered: first those with all new numbers within the inputs' ranges. */
export function offers(
  model: Model,
  plan: Plan,
  parts: CropParts,
  suggested: readonly Suggestion[],
  format: Format,
): SuggestionOffer[] {
  const all = suggested.map((suggestion): SuggestionOffer => {
    const moves = movesFor(model, plan, parts, suggestion.change);
    const beyond = (moves ?? []).flatMap(({ cell, to }) => beyondRange(to, cell, format));
    return { ...suggestion, moves, beyond };
  });
  const open = all.filter((offer) => !isDecided(offer));
  return [...open.filter(({ beyond }) => beyond.length === 0), ...open.filter(({ beyond }) => beyond.length > 0)];
}

/** What was entered where: `Days from one sowing to the next: 2.5 days instead of 2 days, in Nursery first only.` */
export function movesSentence(moves: readonly Move[], plan: string, format: Format): Phrase {
  const sentence = moves.map(({ cell, from, to, where }) => {
    const value = spoken(to, cell.unit, format);
    const before = plainly(spoken(from, cell.unit, format));
    const place =
      where === 'one plan' ? say`, in ${plan} only` : plainly(where === 'every plan' ? wording`, in every plan` : '');
    return say`${plainly(`${cell.label}: `)}${value} instead of ${before}${beyondRange(to, cell, format)}${place}.`;
  });
  return sentences(...sentence);
}
