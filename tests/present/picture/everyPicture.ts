import { decimal } from '../../../src/core/number';
import { plansDrawing } from '../../../src/present/allPlans/drawing';
import { planLines } from '../../../src/present/allPlans/lines';
import { namedPlans } from '../../../src/present/allPlans/plans';
import { planStudy } from '../../../src/present/allPlans/study';
import { drawingOf } from '../../../src/present/beds/bestWeeks/drawing';
import { timeLines, timeLinesPicture } from '../../../src/present/beds/bestWeeks/timeLines';
import { takenYear } from '../../../src/present/beds/year/takenYear';
import { breakevenPicture } from '../../../src/present/breakeven/picture';
import { heatKey } from '../../../src/present/heat/heatKey';
import { heatPicture } from '../../../src/present/heat/picture';
import type { Shades } from '../../../src/present/heat/shades';
import { spreadKey } from '../../../src/present/howSure/spreadKey';
import { spreadPicture, type SpreadStyle } from '../../../src/present/howSure/spreadPicture';
import { spreadOf } from '../../../src/present/howSure/summary';
import { keyText } from '../../../src/present/picture/keySigns';
import { linesPicture, type LinesDrawing } from '../../../src/present/picture/labelledLines';
import { linesKey } from '../../../src/present/picture/linesKey';
import type { TakenPicture } from '../../../src/present/picture/takenPicture';
import { barsPicture } from '../../../src/present/plans/barsPicture';
import { createDates } from '../../../src/present/text/dates';
import { dotRows } from '../../../src/present/timing/dots';
import { dotsPicture } from '../../../src/present/timing/dotsPicture';
import { learningFound } from '../../../src/present/timing/learning';
import { runPicture } from '../../../src/present/timing/runPicture';
import { rowsOf } from '../../../src/present/whatMatters/tornado/rows';
import { tornadoParts } from '../../../src/present/whatMatters/tornado/takenTornado';
import { idOf } from '../../model/table';
import { run } from '../../trade/running';
import { format, worked } from '../allPlans/given';
import { bed, lookOf } from '../beds/bestWeeks/given';
import { only, study, timing } from '../timing/trials';
import { tornadoOf } from '../whatMatters/farm';

/** What a label may hold: signs of XML, a control character, the other direction of writing, and length. */
const awkward = 'Price & <cost> "a head", سعر الرأس \u0001 which goes on for very much longer than any picture is wide';
const about = { title: awkward, sentence: `${awkward}: 9,400 EUR between its low and high.`, key: () => [] };
const room = (width: number): { width: number; height: number } => ({ width, height: 300 });

/** The lines of four plans, of which the two compared are the first and the last. */
export function plansTaken(): LinesDrawing {
  const { model, values } = worked();
  const found = planLines(model, values, { result: idOf(model, 'cost_plant'), input: idOf(model, 'wage'), plan: 3 })!;
  const known = planStudy(found, { from: decimal(0), to: decimal(100) }, 'lowest', { from: 0, to: 40 });
  const moved = { cell: found.lever.cell, today: found.lever.base, range: found.lever.range };
  const today = found.lines.map(({ line }) => line.base);
  return plansDrawing(known, known.stretches, namedPlans(model, [0, 3]), moved, today, [1], format);
}

function ofLines(drawing: LinesDrawing): TakenPicture {
  return {
    ...about,
    key: (ink) => linesKey(drawing, ink),
    draw: (ink, width) => linesPicture(drawing, ink, room(width), 120, format),
  };
}

function spider(): TakenPicture {
  const points = [-20, 0, 20].map((x) => ({ x, y: x === 0 ? NaN : x * x }));
  return ofLines({
    ...plansTaken(),
    lines: Array.from({ length: 8 }, (_, k) => ({ label: `${k} ${awkward}`.slice(0, 20), leading: k === 0, points })),
    across: { min: -20, max: 20, title: awkward, tickAfter: ' %' },
    heights: { min: 0, max: 400 },
    levels: [0, 100],
    rings: [{ x: 20, y: 400, text: awkward.slice(0, 18) }],
  });
}

function breakeven(): TakenPicture {
  const line = [0, 5, 10].map((x) => ({ x, y: x === 5 ? NaN : 3 - x }));
  const drawing = {
    points: { against: line, plan: line.map(({ x, y }) => ({ x, y: -y })), difference: line },
    shown: ['against', 'plan'] as const,
    visible: { from: 0, to: 10 },
    heights: { min: -7, max: 7 },
    target: 0,
    today: { x: 10, text: 'today 10' },
    range: { from: -5, to: 30 },
    crossings: [{ x: 9.9, y: 0, text: '9.90', line: 'plan' as const, leading: true }],
    breaks: [5],
    xTitle: awkward.slice(0, 60),
  };
  return { ...about, draw: (ink, width) => breakevenPicture(drawing, ink, room(width), format) };
}

function tornado(): TakenPicture {
  const { bars, subject } = tornadoOf(
    'a: 3 | range: 1 4\nb: 2 | range: 0 9\nk: 1 | in A: 1 | in B: 3\nr: a * k + b * k - 1 / b',
    'difference',
  );
  const rows = rowsOf(bars, subject, 2, format).map((row) => ({ ...row, name: awkward, flips: true }));
  return { ...about, ...tornadoParts({ bars, rows, subject, decimals: 2, letter: undefined }, format) } as TakenPicture;
}

function planBars(looks?: readonly ('filled' | 'hatched')[]): TakenPicture {
  const bars = {
    names: ['Today', awkward, 'Broken'],
    letters: looks === undefined ? ['A', 'B', 'C'] : ['', '', ''],
    values: [10, -5, NaN],
    texts: ['10', '−5', 'no value'],
    ...(looks !== undefined && { looks }),
  };
  return { ...about, draw: (ink, width) => barsPicture(bars, ink, width, format) };
}

function spread(style: SpreadStyle): TakenPicture {
  const even = Float64Array.from({ length: 1001 }, (_, i) => i / 10);
  const drawn = spreadOf(
    even,
    even.map((x) => x * 1.5),
    50,
  )!;
  const drawing = {
    spread: drawn,
    style,
    letters: ['A', 'B'] as const,
    target: 50,
    targetText: '50',
    today: 60,
    xTitle: 'Margin, EUR/year',
  };
  return {
    ...about,
    key: (ink) =>
      spreadKey(
        [
          { letter: 'A', name: awkward },
          { letter: 'B', name: 'Other' },
        ],
        style,
        ink,
      ),
    draw: (ink, width) => spreadPicture(drawing, ink, room(width), format),
  };
}

const hill = '(1000 - ((early - 12 * one) / one) ^ 2 - ((holes - 70 * hole) / hole) ^ 2) * unit';
const shades: Shades = { paper: [255, 255, 255], better: [190, 140, 50], worse: [80, 90, 110], hatch: [40, 40, 40] };

function heat(): TakenPicture {
  const drawing = drawingOf(lookOf(bed(hill)));
  const texts = { downTitle: 'density', worseText: 'worse than today', step: 'each shade 10', write: String };
  return {
    ...about,
    key: (ink) => heatKey(drawing, texts, true, shades, ink),
    draw: (ink, width) => heatPicture(drawing, ink, shades, room(width), format),
  };
}

function overTime(): TakenPicture {
  const result = lookOf(bed(hill));
  const lines = timeLines(result, String);
  const drawing = { lines, today: 10, best: { x: 12, y: 990 }, xTitle: awkward.slice(0, 40) };
  return { ...about, draw: (ink, width) => timeLinesPicture(drawing, ink, room(width), format) };
}

function year(): TakenPicture {
  const days = run('10 boards every 5 d: 2 d at 10', { days: 365, batch: decimal(50) });
  const names = { plant: { one: 'plant', many: 'plants' }, board: { one: 'board', many: 'boards' }, stages: [awkward] };
  return takenYear({ year: days, boards: 10, names, label: awkward, leaf: '#2c6a38' }, format, createDates('en-GB'));
}

function dots(): TakenPicture {
  const found = study('step,plants,seconds\na,10,110\na,10,130\na,20,240\nb,5,40\nb,5,60\n', timing());
  const rows = dotRows(found);
  const texts = rows.map(() => ['Transplanting', '12.0 s, 10.7 to 13.3'] as const);
  return {
    ...about,
    key: () => [keyText('dot: a batch')],
    draw: (ink, width) => dotsPicture({ rows, texts, chosen: 0, within: 5 }, ink, width, format),
  };
}

function learning(): TakenPicture {
  const found = learningFound(only('1 300; 1 240; 1 210.6; 1 192; 1 178.7'), timing());
  return { ...about, draw: (ink, width) => runPicture(found, ink, width, format) };
}

/** A picture of every kind that can be taken out. */
export const everyPicture: Readonly<Record<string, () => TakenPicture>> = {
  'lines of the two plans compared': breakeven,
  'lines of all plans': () => ofLines(plansTaken()),
  'lines of several entries': spider,
  'bars of what moves a result': tornado,
  'bars of the plans': () => planBars(),
  'bars of costs': () => planBars(['filled', 'hatched', 'filled']),
  'columns of draws': () => spread('histogram'),
  'shares of draws below': () => spread('curve'),
  'shades over two entries': heat,
  'lines over the times': overTime,
  'a year on the water': year,
  'batches as dots': dots,
  'a run of batches': learning,
};
