import { exact } from '../../../core/exact';
import { decimal, type Decimal } from '../../../core/number';
import {
  crowdedDays,
  daysToSpread,
  keptAfterCrowding,
  lawThrough,
  massAtDensity,
  touchingSpread,
  yieldAtDensity,
  type Growth,
  type Pattern,
} from '../../../trade/canopy';
import { isRunning, type Schedule, type Stage } from '../../../trade/schedule';

/** A person's entries on how plants spread; NaN for a blank one. */
export interface SpreadEntered {
  /** All lengths are in one unit. */
  readonly first: Decimal;
  readonly last: Decimal;
  /** Growth rate of the spread, in per cent a day, while plants are small. */
  readonly rate: Decimal;
  readonly pattern: Pattern;
  /** Loss for each crowded day, in per cent. */
  readonly loss: Decimal;
}

/** A running stage, and when its plants touch. */
export interface StageCrowding {
  /** Index among all stages. */
  readonly index: number;
  /** The spread at which neighbours touch. */
  readonly touching: Decimal;
  /**
   * The day in the stage on which neighbours touch, 0 where they do from the start; undefined where they do not touch
   * in the stage.
   */
  readonly day: Decimal | undefined;
  readonly crowded: Decimal;
}

export interface Crowding {
  readonly stages: readonly StageCrowding[];
  /** Share kept after all crowded days; NaN where no loss was entered. */
  readonly kept: Decimal;
}

const zero = decimal(0);

function share(percent: Decimal): Decimal {
  return percent.dividedBy(100);
}

/** When the plants of a stage touch, given the days that they grew in the stages before it. */
function stageCrowding(
  { time, density }: Stage,
  index: number,
  before: Decimal,
  growth: Growth<Decimal>,
  area: Decimal,
  pattern: Pattern,
): StageCrowding {
  const touching = touchingSpread(exact, area, density, pattern);
  const age = daysToSpread(exact, growth, touching);
  const day = age && exact.larger(zero, age.minus(before));
  const isReached = day?.lt(time) === true;
  return { index, touching, day: isReached ? day : undefined, crowded: crowdedDays(exact, time, day) };
}

/**
 * When plants touch, stage by stage, and what that costs.
 * @param area of one board, in the square of the unit of the spreads
 * @returns undefined where first spread, last spread and rate do not describe a growth
 */
export function crowdingOf({ stages }: Schedule, area: Decimal, entered: SpreadEntered): Crowding | undefined {
  const growth = { first: entered.first, last: entered.last, ratePerDay: share(entered.rate) };
  if (!(growth.first.gt(0) && growth.last.gt(growth.first) && growth.ratePerDay.gt(0) && area.gt(0))) return undefined;
  const found: StageCrowding[] = [];
  let before = zero;
  stages.forEach((stage, index) => {
    if (!isRunning(stage)) return;
    found.push(stageCrowding(stage, index, before, growth, area, entered.pattern));
    before = before.plus(stage.time);
  });
  const crowded = found.reduce((sum, stage) => sum.plus(stage.crowded), zero);
  return { stages: found, kept: keptAfterCrowding(exact, crowded, share(entered.loss)) };
}

/** A person's entries on two trials, each at its own density; NaN for a blank one. */
export interface TrialsEntered {
  readonly densities: readonly [Decimal, Decimal];
  readonly masses: readonly [Decimal, Decimal];
}

/** What the reciprocal yield law through two trials gives at a density. */
export interface YieldFound {
  readonly mass: Decimal;
  readonly perBoard: Decimal;
  /** Whether the law fits the trials: plants at the higher density are lighter, and no mass is negative. */
  readonly fits: boolean;
}

/** @returns undefined until both trials are there */
export function yieldOf({ densities, masses }: TrialsEntered, density: Decimal): YieldFound | undefined {
  if (![...densities, ...masses].every((number) => number.gt(0)) || densities[0].eq(densities[1])) return undefined;
  const law = lawThrough(exact, { density: densities[0], mass: masses[0] }, { density: densities[1], mass: masses[1] });
  const mass = massAtDensity(exact, law, density);
  return { mass, perBoard: yieldAtDensity(exact, law, density), fits: law.a.gte(0) && law.b.gt(0) };
}
