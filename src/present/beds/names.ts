import { wording } from '../../language/wording';
import type { CropParts } from '../../model/cropParts';
import { boardsOf, stageBeside, stageNames, withBoards, type CropNames } from './stageNames';
import type { Noun } from '../text/noun';
import { unitWord } from '../text/printedUnit';
import { listed, plainly, textOf, type Phrase } from '../text/phrase';
import { plural } from '../../language/plural';

function noun(unit: string): Noun {
  const one = unitWord(unit);
  return { one, many: plural(one) };
}

/**
 * The names of a crop's plants and boards, from the unit of a density, and of its stages, from the labels of their
 * times.
 */
export function namesOf(parts: CropParts, stages: number): CropNames {
  const powers = [...(parts.get('stage 1 density')?.unit?.dimension ?? [])];
  const over = powers.find(([, power]) => power === 1)?.[0] ?? 'plant';
  const under = powers.find(([, power]) => power === -1)?.[0] ?? 'board';
  const board = noun(under);
  return { plant: noun(over), board, stages: stageNames(parts, stages, board, under) };
}

/** `plants a week`, as a unit or the head of a column. */
export function plantsAWeek({ plant }: Pick<CropNames, 'plant'>): string {
  return wording`${plant.many} a week`;
}

/** `plants a board`. */
export function plantsABoard({ plant, board }: Pick<CropNames, 'plant' | 'board'>): string {
  return wording`${plant.many} a ${board.one}`;
}

/** The boards of some stages, by their numbers: `nursery boards`, `nursery and finishing boards`. */
export function boardsIn(names: CropNames, numbers: readonly number[]): Phrase {
  const stages = listed(numbers.map((number) => stageBeside(names, number - 1)));
  return plainly(withBoards(textOf(stages), names.board.many));
}

/** The same, with the stage numbers: `nursery boards (stage 1) and wide boards (stage 2)`; for the first mention. */
export function boardsFirstMet(names: CropNames, numbers: readonly number[]): Phrase {
  const boards = numbers.map((number) => wording`${boardsOf(names, number - 1).many} (stage ${number})`);
  return plainly(textOf(listed(boards)));
}
