import {
  BarController, BarElement, CategoryScale, Chart, LinearScale, LineController, LineElement, PointElement,
  type ChartConfiguration, type ChartDataset, type ChartOptions,
} from 'chart.js';

Chart.register(BarController, BarElement, CategoryScale, LinearScale, LineController, LineElement, PointElement);

/** What a drawing is made with; CSS colours and pixels. */
export interface Ink {
  readonly text: string;
  readonly quiet: string;
  readonly hair: string;
  readonly family: string;
  readonly size: number;
}

/** A scale of numbers from the left to the right, or from the bottom to the top. */
export interface Axis {
  readonly min: number;
  readonly max: number;
  /** The text of a tick; the ticks stand `step` apart. */
  tick(value: number, step: number): string;
  /** Blank: none. */
  readonly title: string;
  /** Room for its ticks across the axis, in pixels; undefined: as much as they need. */
  readonly room?: number;
}

/** Bars that lie: one for each row from the top, each from a common start; NaN where there is none. */
export interface Bars {
  readonly values: readonly number[];
  readonly from: number;
  readonly fills: readonly (string | CanvasPattern)[];
  readonly edge: string;
  readonly thickness: number;
}

/** A line through points of ascending x; a NaN leaves a gap. */
export interface Line {
  readonly points: readonly { readonly x: number; readonly y: number }[];
  readonly colour: string;
  readonly width: number;
  readonly dash: readonly number[];
}

/** Where a drawn chart has put its numbers, in pixels. */
export interface Plot {
  readonly pen: CanvasRenderingContext2D;
  readonly left: number;
  readonly right: number;
  readonly top: number;
  readonly bottom: number;
  /** Of the whole canvas. */
  readonly width: number;
  readonly height: number;
  readonly x: (value: number) => number;
  /** Of a number on the axis, or of a row's middle. */
  readonly y: (value: number) => number;
}

/** One state of a chart. */
export interface Picture {
  /** Of the canvas, in pixels. */
  readonly width: number;
  readonly height: number;
  readonly ink: Ink;
  readonly padding: { readonly left: number; readonly right: number; readonly top: number; readonly bottom: number };
  readonly x: Axis;
  /** An axis beside lines; beside bars there are rows. */
  readonly y: Axis | { readonly rows: number };
  /** The first lies on top. */
  readonly bars: readonly Bars[];
  readonly lines: readonly Line[];
  /** Marks under the bars and lines. */
  under(plot: Plot): void;
  /** Marks over them. */
  over(plot: Plot): void;
}

/** A chart on a canvas. */
export interface Drawing {
  /** Draws at once. */
  show(picture: Picture): void;
  close(): void;
}

type Kind = 'bar' | 'line';
type Options = ChartOptions<Kind>;
type ScaleOptions = NonNullable<Options['scales']>[string];

function scaleOf(axis: Axis, { text, quiet, hair, family, size }: Ink, grid: boolean): ScaleOptions {
  return {
    type: 'linear',
    min: axis.min,
    max: axis.max,
    afterFit: (scale) => {
      if (axis.room !== undefined) scale[scale.isHorizontal() ? 'height' : 'width'] = axis.room;
    },
    grid: { color: hair, display: grid, drawTicks: false },
    border: { display: false },
    title: { display: axis.title !== '', text: axis.title, color: text, font: { family, size, weight: 'normal' } },
    ticks: {
      color: quiet,
      font: { family, size },
      maxTicksLimit: 7,
      maxRotation: 0,
      // The ends of the scale are wherever the drawing ends, rarely a round number.
      includeBounds: false,
      callback: (value, _index, ticks) => {
        const step = Math.abs((ticks[1]?.value ?? 1) - (ticks[0]?.value ?? 0));
        return axis.tick(Number(value), step);
      },
    },
  };
}

function optionsOf({ ink, padding, x, y }: Picture): Options {
  const rows = 'rows' in y;
  return {
    animation: false,
    parsing: false,
    normalized: true,
    responsive: false,
    maintainAspectRatio: false,
    events: [],
    indexAxis: rows ? 'y' : 'x',
    layout: { padding, autoPadding: false },
    scales: {
      // Rows carry their numbers themselves.
      x: scaleOf(x, ink, !rows),
      y: rows ? { type: 'category', display: false } : scaleOf(y, ink, true),
    },
  };
}

function barSet({ values, from, fills, edge, thickness }: Bars): ChartDataset<Kind> {
  return {
    type: 'bar',
    data: values.map((x, y) => ({ x, y })),
    base: from,
    backgroundColor: [...fills],
    borderColor: edge,
    borderWidth: 1,
    borderSkipped: false,
    barThickness: thickness,
    grouped: false,
  };
}

function lineSet({ points, colour, width, dash }: Line): ChartDataset<Kind> {
  return {
    type: 'line',
    data: [...points],
    borderColor: colour,
    borderWidth: width,
    borderDash: [...dash],
    borderJoinStyle: 'round',
    pointRadius: 0,
    spanGaps: false,
    tension: 0,
  };
}

function plotOf(chart: Chart): Plot {
  const { chartArea: area, scales } = chart;
  return {
    pen: chart.ctx,
    ...area,
    width: chart.width,
    height: chart.height,
    x: (value) => scales['x']!.getPixelForValue(value),
    y: (value) => scales['y']!.getPixelForValue(value),
  };
}

function configurationOf(current: () => Picture): ChartConfiguration<Kind> {
  const picture = current();
  return {
    type: 'rows' in picture.y ? 'bar' : 'line',
    data: { labels: [], datasets: [] },
    options: optionsOf(picture),
    plugins: [
      {
        id: 'marks',
        beforeDatasetsDraw: (chart) => current().under(plotOf(chart)),
        afterDatasetsDraw: (chart) => current().over(plotOf(chart)),
      },
    ],
  };
}

/** Starts a chart; a canvas holds one at a time, either of bars or of lines. */
export function openChart(canvas: HTMLCanvasElement, first: Picture): Drawing {
  let picture = first;
  const chart = new Chart<Kind>(canvas, configurationOf(() => picture));
  const show = (next: Picture): void => {
    picture = next;
    if (chart.width !== next.width || chart.height !== next.height) chart.resize(next.width, next.height);
    const sets = [...next.bars.map(barSet), ...next.lines.map(lineSet)];
    // A dataset object that stays keeps what the library has built for it.
    chart.data.datasets = sets.map((set, i) => Object.assign(chart.data.datasets[i] ?? {}, set));
    chart.data.labels = 'rows' in next.y ? Array.from({ length: next.y.rows }, (_, row) => String(row)) : [];
    chart.options = optionsOf(next);
    chart.update('none');
  };
  show(first);
  return { show, close: () => chart.destroy() };
}
