import type { TableRequest } from '../../heat/table';
import type { Decimal } from '../../../core/number';
import type { Cell } from '../../../model/cell';
import { heldSurface } from '../../../study/heldSurface';
import type { HeatDrawing, HeatMark } from '../../heat/picture';
import { withUnit } from '../../text/withUnit';
import type { BestWeeksResult } from './search';
import type { TimeLine } from './timeLines';
import { thinned } from './thinned';
import { bestWeeksTexts } from './texts';
import { commonTexts } from '../../text/commonTexts';

/** The heat picture of the best weeks: hatched where it is worse than today. */
export function drawingOf({ ask, grid, bands, paths, best }: BestWeeksResult): HeatDrawing {
  const [x, y] = [ask.time.base.toNumber(), ask.density.base.toNumber()];
  const today: HeatMark = { x, y, text: commonTexts.today, kind: 'today' };
  const isToday = best?.time.eq(ask.time.base) === true && best.density.eq(ask.density.base);
  const marks: HeatMark[] =
    best === undefined || isToday
      ? [{ ...today, text: bestWeeksTexts.todayIsBest }]
      : [today, { x: best.time.toNumber(), y: best.density.toNumber(), text: bestWeeksTexts.best, kind: 'best' }];
  return {
    grid,
    bands,
    paths,
    marks,
    worse: ask.way === 'highest' ? 'below' : 'above',
    levelText: bestWeeksTexts.asToday,
    acrossTitle: withUnit(ask.time.cell),
  };
}

/** What the table needs besides its numbers. */
interface Named {
  readonly result: Cell;
  readonly caption: string;
  readonly worseText: string;
}

/** The table of the best weeks, with every density that has a line in the picture. */
export function tableRequestOf(result: BestWeeksResult, lines: readonly TimeLine[], named: Named): TableRequest {
  const { ask, best } = result;
  const today = ask.question.base;
  const drawn = lines.flatMap(({ row }) => ask.densities[row] ?? []);
  const mustTimes = best === undefined ? [ask.time.base] : [ask.time.base, best.time];
  const isWorse = (value: Decimal): boolean => (ask.way === 'highest' ? value.lt(today) : value.gt(today));
  return {
    ...named,
    isWorse,
    surface: heldSurface(ask.question, ask.time, ask.density, ask.giving),
    across: { cell: ask.time.cell, today: ask.time.base, places: thinned(ask.times, mustTimes) },
    down: { cell: ask.density.cell, today: ask.density.base, places: thinned(ask.densities, drawn) },
  };
}
