import { wording } from '../language/wording';
import { describe, plain, same, times, type Dimension } from '../core/dimension';
import { problem, type Problem } from '../core/problem';
import { shortened } from '../core/shortened';
import { isCounted } from '../core/unit';
import type { Cell } from './cell';
import { givesTruth, type Plan } from './model';

/** The cells of a model by their part in the crop schedule, such as `stage 1 time`. */
export type CropParts = ReadonlyMap<string, Cell>;

const cropTime: Dimension = new Map([['day', 1]]);
const area: Dimension = new Map([['m', 2]]);
const form =
  /^(?:boards|interval|turnaround|board area|first sowing|closed [1-9]\d* (?:from|to)|stage [1-9]\d* (?:time|density|survival|boards|time in (?:0[1-9]|1[0-2])))$/;

function wrong(cell: Cell, code: string, what: string, fix: string): Problem {
  const where = { row: cell.row, column: 'crop', cell: cell.name, text: cell.crop };
  return problem(code, `${what}: ${shortened(cell.crop)}. ${fix}`, where);
}

function missing(code: string, part: string, near: Cell | undefined): Problem {
  const where = { row: near?.row ?? 0, column: 'crop', cell: near?.name ?? '', text: part };
  return problem(
    code,
    wording`crop schedule incomplete: ${part} is missing. Tag the cell that holds it in the column crop.`,
    where,
  );
}

/** Cells by part; of two cells of one part the first counts. */
export function cropParts(cells: readonly Cell[]): CropParts {
  const parts = new Map<string, Cell>();
  for (const cell of cells) if (cell.crop !== '' && !parts.has(cell.crop)) parts.set(cell.crop, cell);
  return parts;
}

/** A count of one noun, or a plain number. */
function isCountNoun(dimension: Dimension): boolean {
  const [only] = [...dimension];
  return only === undefined || (dimension.size === 1 && only[1] === 1 && isCounted(only[0]));
}

/** The dimensions that a part may have; `count` or `density` stands for any dimension of that kind. */
function wanted(part: string, boards: Dimension): readonly Dimension[] | 'count' | 'density' {
  if (part === 'boards' || / boards$/.test(part)) return 'count';
  if (/ density$/.test(part)) return 'density';
  if (part === 'board area') return [times(area, boards, -1), area];
  if (/survival$|^first sowing$|^closed/.test(part)) return [plain];
  return [cropTime];
}

/** The unit in which the model counts its boards. */
function boardsIn(parts: CropParts): Dimension {
  return parts.get('boards')?.unit?.dimension ?? new Map([['board', 1]]);
}

/** A density, which must count the same plants on the same boards as that of the first stage. */
function densityFault(cell: Cell, dimension: Dimension, parts: CropParts): Problem | undefined {
  const boards = boardsIn(parts);
  if (!isCountNoun(times(dimension, boards))) {
    const fix =
      boards.size === 0
        ? wording`Give the boards the unit board, and it plant/board.`
        : wording`Give it a unit such as plant/board.`;
    return wrong(cell, 'crop-unit', wording`not plants per board`, fix);
  }
  const first = parts.get('stage 1 density');
  if (first?.unit === undefined || same(first.unit.dimension, dimension)) return undefined;
  const fix =
    first.unitText === ''
      ? wording`Give it the unit of ${first.name}, none.`
      : wording`Give it the unit of ${first.name}, ${first.unitText}.`;
  const what =
    cell.unitText === ''
      ? wording`not the plants of the first stage (none)`
      : wording`not the plants of the first stage (${cell.unitText})`;
  return wrong(cell, 'crop-unit', what, fix);
}

function unitFault(cell: Cell, parts: CropParts): Problem | undefined {
  const dimension = cell.unit?.dimension;
  if (dimension === undefined) return undefined;
  const fits = wanted(cell.crop, boardsIn(parts));
  if (fits === 'count') {
    return isCountNoun(dimension)
      ? undefined
      : wrong(cell, 'crop-unit', wording`not a number of boards`, wording`Give it a unit such as board.`);
  }
  if (fits === 'density') return densityFault(cell, dimension, parts);
  if (fits.some((dimensionThatFits) => same(dimensionThatFits, dimension))) return undefined;
  const what =
    cell.unitText === ''
      ? wording`unit does not fit its part in the crop schedule (none)`
      : wording`unit does not fit its part in the crop schedule (${cell.unitText})`;
  return wrong(cell, 'crop-unit', what, wording`Give it ${describe(fits[0] ?? plain)}.`);
}

/** Whether what a cell measures suits its part in the crop schedule. */
export function suitsItsPart(cell: Cell, parts: CropParts): boolean {
  return unitFault(cell, parts) === undefined;
}

/** The number of a part's stage; NaN for parts of no stage. */
function stageOf(part: string): number {
  return Number(/^stage (\d+)/.exec(part)?.[1] ?? NaN);
}

function stageNumbers(parts: CropParts): number[] {
  const numbers = [...parts.keys()].map(stageOf).filter((number) => !Number.isNaN(number));
  return [...new Set(numbers)].sort((a, b) => a - b);
}

/** The stages that must be complete: every one that a cell names, and the first number missing among them. */
function neededStages(parts: CropParts): number[] {
  const named = stageNumbers(parts);
  const leftOut = named.findIndex((number, i) => number !== i + 1) + 1;
  if (named.length === 0) return [1];
  return leftOut === 0 ? named : [...named, leftOut].sort((a, b) => a - b);
}

/** Finds, for a stage, the first cell in file order that belongs to it or to a later one. */
function firstFrom(parts: CropParts): (stage: number) => Cell | undefined {
  const staged = [...parts].map(([part, cell], place) => ({ stage: stageOf(part), place, cell }));
  const later = staged.filter(({ stage }) => !Number.isNaN(stage)).sort((a, b) => b.stage - a.stage);
  const firsts = new Map<number, Cell>();
  let first = later[0];
  for (const part of later) {
    if (first === undefined || part.place < first.place) first = part;
    firsts.set(part.stage, first.cell);
  }
  const stages = [...firsts.keys()].reverse();
  return (stage) => firsts.get(firsts.has(stage) ? stage : (stages.find((other) => other >= stage) ?? NaN));
}

function gaps(parts: CropParts): Problem[] {
  const [first] = parts.values();
  const whole = ['boards', 'interval'].filter((part) => !parts.has(part));
  const faults = whole.map((part) => missing('crop-missing', part, first));
  const nearTo = firstFrom(parts);
  for (const number of neededStages(parts)) {
    const near = nearTo(number) ?? first;
    const lacking = [`stage ${number} time`, `stage ${number} density`].filter((part) => !parts.has(part));
    faults.push(...lacking.map((part) => missing('crop-missing', part, near)));
  }
  return faults;
}

function halfClosed(parts: CropParts): Problem[] {
  return [...parts].flatMap(([part, cell]) => {
    const other = part.endsWith(' from') ? part.replace(/ from$/, ' to') : part.replace(/ to$/, ' from');
    return part.startsWith('closed') && !parts.has(other) ? [missing('crop-missing', other, cell)] : [];
  });
}

/** Closed times are numbered 1, 2, 3 … */
function closedGaps(parts: CropParts): Problem[] {
  const named = [...parts].flatMap(([part, cell]) => {
    const number = /^closed (\d+) from$/.exec(part)?.[1];
    return number === undefined ? [] : [{ number: Number(number), cell }];
  });
  const numbers = new Set(named.map(({ number }) => number));
  return named
    .filter(({ number }) => number > 1 && !numbers.has(number - 1))
    .map(({ number, cell }) => missing('crop-missing', `closed ${number - 1} from`, cell));
}

/** What is wrong with the days of the year that a cell holds: whole numbers from 1 to 365. */
export function dateFaults(cell: Cell, plans: readonly Plan[]): Problem[] {
  if (!/^first sowing$|^closed /.test(cell.crop)) return [];
  return plans.flatMap(({ column, contents }) => {
    const content = contents[cell.id];
    if (content?.kind !== 'input') return [];
    const { number, text, own } = content;
    if (number.isInteger() && number.gte(1) && number.lte(365)) return [];
    const where = { row: cell.row, column: own ? (column ?? '') : 'formula', cell: cell.name, text };
    return [problem('crop-day', wording`no day of the year: ${text}. Give a whole number from 1 to 365.`, where)];
  });
}

/** Faults of parts that hold true or false, and not a number, in some plan. */
function kindFaults(cells: readonly Cell[], plans: readonly Plan[]): Problem[] {
  return cells
    .filter(({ id }) => plans.some((plan) => givesTruth(plan, id)))
    .map((cell) =>
      wrong(cell, 'crop-kind', wording`true or false where the crop schedule needs a number`, wording`Give a number.`),
    );
}

/** Everything wrong with a model's crop column: unknown parts, two cells of one part, missing parts, units, kinds. */
export function cropFaults(cells: readonly Cell[], plans: readonly Plan[]): Problem[] {
  const tagged = cells.filter(({ crop }) => crop !== '');
  const [known, unknown] = [true, false].map((is) => tagged.filter(({ crop }) => form.test(crop) === is)) as [
    Cell[],
    Cell[],
  ];
  const parts = cropParts(known);
  if (tagged.length === 0) return [];
  const fix = wording`Use boards, interval, stage 1 time, stage 1 density, stage 1 survival and their like.`;
  return [
    ...unknown.map((cell) => wrong(cell, 'crop-unknown', wording`part of the crop schedule not known`, fix)),
    ...known
      .filter((cell) => parts.get(cell.crop) !== cell)
      .map((cell) =>
        wrong(cell, 'crop-twice', wording`two cells of one part in the crop schedule`, wording`Keep one of them.`),
      ),
    ...gaps(parts),
    ...halfClosed(parts),
    ...closedGaps(parts),
    ...known.flatMap((cell) => unitFault(cell, parts) ?? []),
    ...kindFaults(known, plans),
  ];
}
