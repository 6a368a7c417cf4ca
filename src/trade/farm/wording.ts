import { wording } from '../../language/wording';
import type { FarmQuestion } from './answers';

/** What the file of a farm says of itself, in the language in which it was set up. */

/** A farm without a name. */
const unnamedFarm = wording`My farm`;

const asks: Readonly<Record<FarmQuestion, string>> = {
  hire: wording`Does it pay to hire a transplanter?`,
  density: wording`What is a nursery worth?`,
  plug: wording`What may a plug cost?`,
};

/** The title of a farm's model, which begins with its question. */
export function farmTitle(question: FarmQuestion, name: string | undefined): string {
  return `${asks[question]} ${name ?? unnamedFarm}`;
}

const abouts: Readonly<Record<FarmQuestion, string>> = {
  hire: wording`Two ways to grow on floating boards. Straight to finishing: seedlings go to the wide boards at once. Nursery first: they stand on crowded nursery boards, and each one is moved by hand to the wide boards, with a hire for the hours that the present staff cannot cover. The source of each number says whose it is.`,
  density: wording`Two ways to grow on floating boards. Straight to finishing: seedlings go to the wide boards at once. Nursery first: they stand on crowded nursery boards, and each one is moved by hand to the wide boards. Hours beyond those of the present staff are paid by the hour; nobody is hired. The source of each number says whose it is.`,
  plug: wording`Foam cubes and peat plugs that are used once, and holders with a wick that come back. The plans say which of them the farm buys. The source of each number says whose it is.`,
};

/** What the first row of a farm's model says below its title. */
export function farmAbout(question: FarmQuestion): string {
  return abouts[question];
}

/** Sources of numbers that a farm starts with though nobody gave them. */
export const openSources = {
  total: wording`worked out: as many days from set-out to harvest in both plans`,
  noFreeHours: wording`worked out: the hours of today’s work as it then stood, and none free beside them`,
  noPromise: wording`left open: no hours are guaranteed`,
  noHouse: wording`left open: the house is not counted`,
  noLimit: wording`left open: no limit`,
  largestBatch: wording`left open: the largest batch that fits`,
  onePlug: wording`left open: one plug for each place`,
  boards: wording`worked out: as many as the nursery needs on its fullest day`,
} as const;

/** The source of the hours of the present staff, of which some are free. */
export function freeHoursSource(entered: string, free: string): string {
  return wording`${entered}: the hours of today’s work as it then stood, and ${free} h a week free beside them`;
}
