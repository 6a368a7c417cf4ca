import { wording } from '../../language/wording';
import type { Cell } from '../../model/cell';
import type { CropParts } from '../../model/cropParts';
import type { Noun } from '../text/noun';

/** What a crop's plants, boards and stages are called. */
export interface CropNames {
  readonly plant: Noun;
  readonly board: Noun;
  /** By stage, as the name stands before the word for boards: `nursery` boards, `tight` benches. */
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

function nameIn(label: string, { one, many }: Noun): string | undefined {
  const name = forms.flatMap((form) => form.exec(label.trim())?.groups?.['name'] ?? [])[0];
  const bare = name?.replace(new RegExp(` (?:${one}|${many})$`, 'i'), '').toLowerCase();
  return bare === undefined || bare.length > longestName ? undefined : bare;
}

/** The trade's names for a number of stages: `nursery` for the first, `finishing` for the last. */
function usualNames(count: number): string[] {
  return Array.from({ length: count }, (_, i) => {
    if (i === count - 1) return 'finishing';
    if (i === 0) return 'nursery';
    return count === 3 ? 'middle' : wording`middle ${i}`;
  });
}

/**
 * The names of the stages, from the labels of their times where every label holds a name of its own, else those of the
 * trade. A skipped stage has a name too.
 */
export function stageNames(parts: CropParts, count: number, board: Noun): string[] {
  const labelled = Array.from({ length: count }, (_, i): string | undefined => {
    const cell: Cell | undefined = parts.get(`stage ${i + 1} time`);
    return cell && nameIn(cell.label, board);
  });
  const names = labelled.filter((name) => name !== undefined);
  return names.length === count && new Set(names).size === count ? names : usualNames(count);
}

/** The word for the boards of a stage, by its index: `nursery boards`. */
export function boardsOf({ stages, board }: CropNames, stage: number): Noun {
  const name = stages[stage] ?? wording`stage ${stage + 1}`;
  return { one: `${name} ${board.one}`, many: `${name} ${board.many}` };
}
