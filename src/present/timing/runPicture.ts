import { floatOf } from '../../core/number';
import { medianOf } from '../../trade/oddBatches';
import { isCounted } from '../../trade/timeStudy';
import type { ChartInk } from '../picture/ink';
import type { LinesPicture } from '../picture/linesPicture';
import { level, ring } from '../picture/marks';
import type { Plot } from '../picture/plot';
import { figure, words, type DataTable } from '../table/dataTable';
import type { Format } from '../text/numberFormat';
import { timingFields } from './texts';
import { learningTexts } from './learningTexts';
import type { LearningFound } from './learning';

/** With more batches their rings would hide one another, and the line alone is drawn. */
const mostRings = 400;
/** Points of the curve, enough for a smooth line. */
const steps = 60;
const cross = 4;

/** The curve from the first plant drawn to the last. */
function curvePoints({ curve }: LearningFound, from: number, to: number): { x: number; y: number }[] {
  if (curve === undefined || !curve.isLearning || !(to > from)) return [];
  return Array.from({ length: steps + 1 }, (_, i) => {
    const x = from * (to / from) ** (i / steps);
    return { x, y: curve.after(x).seconds };
  });
}

/** Draws each batch: a ring, or a cross for one that was left out. */
function marks(plot: Plot, { run }: LearningFound, ink: ChartInk): void {
  const { pen } = plot;
  for (const { batch, middle, seconds } of run.length > mostRings ? [] : run) {
    if (isCounted(batch)) {
      ring(plot, { x: middle, y: seconds }, { colour: ink.planA, width: 2, dash: [] }, ink.paper, 4);
      continue;
    }
    const [x, y] = [plot.x(middle), Math.min(Math.max(plot.y(seconds), plot.top), plot.bottom)];
    pen.beginPath();
    pen.moveTo(x - cross, y - cross);
    pen.lineTo(x + cross, y + cross);
    pen.moveTo(x - cross, y + cross);
    pen.lineTo(x + cross, y - cross);
    pen.strokeStyle = ink.quiet;
    pen.lineWidth = 1.5;
    pen.stroke();
  }
}

/** The batches of a step in order, over the plants done, with their median and the curve of learning if any. */
export function runPicture(found: LearningFound, ink: ChartInk, width: number, format: Format): LinesPicture {
  const counted = found.run.filter(({ batch }) => isCounted(batch));
  const points = counted.map(({ middle, seconds }) => ({ x: middle, y: seconds }));
  const last = found.run.at(-1)?.upTo ?? 1;
  const curve = curvePoints(found, found.run[0]?.middle ?? 1, last);
  const heights = [...points, ...curve].map(({ y }) => y);
  const [least, most] = heights.reduce(([low, high], y) => [Math.min(low, y), Math.max(high, y)], [Infinity, 0]);
  const room = Math.max((most - least) * 0.12, most * 0.02);
  const median = medianOf(points.map(({ y }) => y));
  return {
    width,
    height: Math.round(Math.min(300, Math.max(210, width * 0.4))),
    ink,
    padding: { left: 0, right: 10, top: 10, bottom: 0 },
    x: { min: 0, max: last, title: learningTexts.across, tick: format.tick },
    y: { min: Math.max(0, least - room), max: most + room, title: '', tick: format.tick },
    lines: [
      { points, colour: ink.planA, width: 1, dash: [] },
      ...(curve.length > 0 ? [{ points: curve, colour: ink.text, width: 2.5, dash: [] }] : []),
    ],
    under: (plot) => level(plot, median, { colour: ink.quiet, width: 1, dash: [4, 4] }),
    over: (plot) => marks(plot, found, ink),
  };
}

/** The first batches of the run are tabled; more would be slow to lay out. */
export const mostRunRows = 200;

export function runTable({ run }: LearningFound, format: Format): DataTable {
  const { across, day, numbers } = learningTexts;
  return {
    caption: numbers,
    columns: [across, day, timingFields.secondsEach].map((name) => ({ name })),
    rows: run.slice(0, mostRunRows).map(({ batch, upTo, seconds }) => {
      const before = upTo - floatOf(batch.plants);
      return [figure(format.tick(before, 1), before), words(batch.date), figure(format.tick(seconds, 0.01), seconds)];
    }),
  };
}
