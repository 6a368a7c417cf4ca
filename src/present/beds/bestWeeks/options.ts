import type { Decimal } from '../../../core/number';
import { isCounted, isCurrency } from '../../../core/unit';
import type { Cell } from '../../../model/cell';
import { question, type Question } from '../../../model/response';
import type { Values } from '../../../model/values';
import { lever, type Lever, type View } from '../../../model/view';
import type { Way } from '../../../study/best';
import { heldSurface, type Giving } from '../../../study/heldSurface';
import { betterWay } from '../../../trade/betterWay';
import { heldBy, stageLevers, type StageLevers } from '../../../trade/stageLevers';
import { densityPlaces, timePlaces } from './places';

/** What stays the same as the time of a stage moves: the time of all stages together, or that of the next stage. */
export type HeldTime = 'total' | 'next';

/** A stage that can be asked about, with the entries that move it and whether the total time can be held. */
export interface StageOption extends Pick<StageLevers, 'stage'> {
  readonly times: readonly { readonly cell: Cell; readonly canHoldTotal: boolean }[];
  readonly densities: readonly Cell[];
}

/** A person's choice. A stage or an entry that the model does not have is replaced by the usual one. */
export interface BestChoice {
  readonly stage: number | undefined;
  readonly time: string;
  readonly density: string;
  readonly held: HeldTime;
}

/** A question of the best weeks: a result as the time and the density of an early stage move. */
export interface BestWeeksRequest {
  readonly question: Question;
  readonly stage: number;
  readonly time: Lever;
  readonly density: Lever;
  readonly giving: Giving | undefined;
  readonly times: readonly Decimal[];
  readonly densities: readonly Decimal[];
  /**
   * Plants on a board of the stage for a number of the density's input; the same number where that input is the
   * density.
   */
  readonly perBoard: (density: number) => number;
  readonly way: Way;
  /** The labels of the plan's checks that fail at a time and a density. */
  readonly failing: (time: number, density: number) => string[];
}

/** The stages of a view's plan that can be asked about. */
export function stageOptions(view: View, values: Values): StageOption[] {
  return stageLevers(view, values).map((found) => ({
    stage: found.stage,
    times: found.times.map((time) => ({
      cell: time.cell,
      canHoldTotal: heldBy(view, values, found, time) !== undefined,
    })),
    densities: found.densities.map(({ cell }) => cell),
  }));
}

/** The option that is chosen, with its entries. */
export interface Chosen {
  readonly option: StageOption;
  readonly time: StageOption['times'][number];
  readonly density: Cell;
  readonly held: HeldTime;
}

export function chosenOf(options: readonly StageOption[], choice: BestChoice): Chosen | undefined {
  const option = options.find(({ stage }) => stage === choice.stage) ?? options[0];
  const time = option?.times.find(({ cell }) => cell.name === choice.time) ?? option?.times[0];
  const density = option?.densities.find(({ name }) => name === choice.density) ?? option?.densities[0];
  if (option === undefined || time === undefined || density === undefined) return undefined;
  return { option, time, density, held: time.canHoldTotal ? choice.held : 'next' };
}

/** Whether the best of a result is usually its lowest: so for a cost, and for money per something that is no gain. */
export function usualWay(result: Cell): Way {
  const { unit, label, name } = result;
  const better = betterWay(result);
  if (better !== undefined) return better === 'lower' ? 'lowest' : 'highest';
  const powers = [...(unit?.dimension ?? [])];
  const isMoneyForEach =
    powers.length === 2 &&
    powers.some(([kind, power]) => isCurrency(kind) && power === 1) &&
    powers.some(([kind, power]) => isCounted(kind) && power === -1);
  const isGain = /\b(?:income|left|worth|ingresos?|queda|vale)\b/i.test(`${label} ${name.replaceAll('_', ' ')}`);
  return isMoneyForEach && !isGain ? 'lowest' : 'highest';
}

/** The question for a choice with today's numbers; undefined where an entry of the choice is no longer an input. */
export function bestWeeksRequest(
  view: View,
  values: Values,
  againstValues: Values | undefined,
  chosen: Chosen,
  way: Way,
): BestWeeksRequest | undefined {
  const found = stageLevers(view, values).find(({ stage }) => stage === chosen.option.stage);
  const [time, density] = [lever(view, chosen.time.cell.id), lever(view, chosen.density.id)];
  if (found === undefined || time === undefined || density === undefined) return undefined;
  const giving = chosen.held === 'total' ? heldBy(view, values, found, time) : undefined;
  const alone = (result: number): Question => question({ ...view, result, against: undefined }, values, undefined);
  const onBoard = alone(found.densityCell.id).response([density]);
  const checks = view.model.cells.filter(({ role }) => role === 'check');
  return {
    question: question(view, values, againstValues),
    stage: found.stage,
    time,
    density,
    giving,
    times: timePlaces(time, giving),
    densities: densityPlaces(density),
    perBoard: (x) => onBoard.float([x]),
    way,
    failing: (x, y) =>
      checks
        .filter(({ id }) => heldSurface(alone(id), time, density, giving).float(x, y) === 0)
        .map(({ label }) => label),
  };
}
