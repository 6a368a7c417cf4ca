import { wordingOf } from '../../language/wording';
import type { Cell } from '../../model/cell';
import type { CropParts } from '../../model/cropParts';
import type { Noun } from '../text/noun';
import { knownStage } from './knownStages';

/** What a crop's plants, boards and stages are called. */
export interface CropNames {
  readonly plant: Noun;
  readonly board: Noun;
  /**
   * By stage, as its label has the name beside the word for boards, or as the trade's English has it: `nursery` boards,
   * `tight` benches. To be read through `stageName` and `boardsOf`.
   */
  readonly stages: readonly string[];
}

/** A longer name does not fit a column of a table. */
const longestName = 24;

/**
 * Labels of stage times from which the stage's name is taken, such as `Time on nursery boards`, `Days crowded`,
 * `Nursery time`.
 */
const forms: readonly RegExp[] = [
  /^(?:time|weeks|days)(?: (?:on|in|at))?(?: the)? (?<name>[\p{L} -]+)$/iu,
  /^(?<name>[\p{L} -]+?) (?:time|weeks|days)$/iu,
];

/** A label in Spanish, where the word for boards comes first: `Tiempo en planchas de vivero`. */
function formWithBoardsFirst({ one, many }: Noun): RegExp {
  return new RegExp(`^(?:tiempo|semanas|días) en(?: las?| los| el)? (?:${many}|${one}) (?<name>[\\p{L} -]+)$`, 'iu');
}

function nameIn(label: string, board: Noun, unit: string): string | undefined {
  const name = [formWithBoardsFirst(board), ...forms].flatMap(
    (form) => form.exec(label.trim())?.groups?.['name'] ?? [],
  )[0];
  const bare = name?.replace(new RegExp(` (?:${board.one}|${board.many}|${unit}(?:e?s)?)$`, 'i'), '').toLowerCase();
  return bare === undefined || bare.length > longestName ? undefined : bare;
}

/** The trade's names for a number of stages: `nursery` for the first, `finishing` for the last. */
function usualNames(count: number): string[] {
  return Array.from({ length: count }, (_, i) => {
    if (i === count - 1) return 'finishing';
    if (i === 0) return 'nursery';
    return count === 3 ? 'middle' : `middle ${i}`;
  });
}

/**
 * The names of the stages, from the labels of their times where every label holds a name of its own, else those of the
 * trade. A skipped stage has a name too.
 * @param board the word for boards on this page
 * @param unit the file's own, in English as a rule
 */
export function stageNames(parts: CropParts, count: number, board: Noun, unit = board.one): string[] {
  const labelled = Array.from({ length: count }, (_, i): string | undefined => {
    const cell: Cell | undefined = parts.get(`stage ${i + 1} time`);
    return cell && nameIn(cell.label, board, unit);
  });
  const names = labelled.filter((name) => name !== undefined);
  return names.length === count && new Set(names).size === count ? names : usualNames(count);
}

/** The name of a stage by itself, by its index: `nursery`; blank for none. */
export function stageName({ stages }: Pick<CropNames, 'stages'>, stage: number): string {
  const name = stages[stage] ?? '';
  return knownStage(name)?.alone ?? name;
}

/** The name of a stage as it stands beside the word for its boards; `stage 2` where it has none. */
function besideBoards({ stages }: Pick<CropNames, 'stages'>, stage: number): Noun {
  const name = stages[stage] ?? wordingOf('beside the word for its boards')`stage ${stage + 1}`;
  return knownStage(name)?.beside ?? { one: name, many: name };
}

/** The same beside the word for several of its boards: `nursery`. */
export function stageBeside(names: Pick<CropNames, 'stages'>, stage: number): string {
  return besideBoards(names, stage).many;
}

/** Boards with the names of their stages in the order of the language: `nursery and finishing boards`. */
export function withBoards(names: string, boards: string): string {
  return wordingOf('names of stages beside the word for their boards')`${names} ${boards}`;
}

/** The word for the boards of a stage, by its index: `nursery boards`. */
export function boardsOf(names: CropNames, stage: number): Noun {
  const { one, many } = besideBoards(names, stage);
  return { one: withBoards(one, names.board.one), many: withBoards(many, names.board.many) };
}
