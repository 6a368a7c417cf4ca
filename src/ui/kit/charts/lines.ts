import {
  Chart,
  LinearScale,
  LineController,
  LineElement,
  PointElement,
  type ChartDataset,
  type ChartOptions,
  type Plugin,
} from 'chart.js';
import type { Ink } from '../../../present/picture/ink';
import type { DrawnLine, LinesPicture } from '../../../present/picture/linesPicture';
import type { Axis, Drawing, Plot } from '../../../present/picture/plot';
import { canvasTools } from './canvasPlot';

Chart.register(LinearScale, LineController, LineElement, PointElement);

type Options = ChartOptions<'line'>;
type ScaleOptions = NonNullable<Options['scales']>[string];

function scaleOf(axis: Axis, { text, quiet, hair, family, size }: Ink): ScaleOptions {
  return {
    type: 'linear',
    min: axis.min,
    max: axis.max,
    grid: { color: hair, drawTicks: false },
    border: { display: false },
    title: { display: axis.title !== '', text: axis.title, color: text, font: { family, size, weight: 'normal' } },
    ticks: {
      color: quiet,
      font: { family, size },
      maxTicksLimit: 7,
      maxRotation: 0,
      // The ends of the axis are those of the drawing, rarely round numbers.
      includeBounds: false,
      callback: (value, _index, ticks) => {
        const step = Math.abs((ticks[1]?.value ?? 1) - (ticks[0]?.value ?? 0));
        return axis.tick(Number(value), step);
      },
    },
  };
}

function optionsOf({ ink, padding, x, y }: LinesPicture): Options {
  return {
    animation: false,
    parsing: false,
    normalized: true,
    responsive: false,
    maintainAspectRatio: false,
    events: [],
    layout: { padding, autoPadding: false },
    scales: { x: scaleOf(x, ink), y: scaleOf(y, ink) },
  };
}

function lineSet({ points, colour, width, dash }: DrawnLine): ChartDataset<'line'> {
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
    ...canvasTools(chart.ctx, area),
    ...area,
    width: chart.width,
    height: chart.height,
    x: (value) => scales['x']!.getPixelForValue(value),
    y: (value) => scales['y']!.getPixelForValue(value),
  };
}

/** Starts a chart of lines on a canvas, which can hold only one. */
export function openLines(canvas: HTMLCanvasElement): Drawing<LinesPicture> {
  let chart: Chart<'line'> | undefined;
  let drawn: LinesPicture | undefined;
  const marks: Plugin<'line'> = {
    id: 'marks',
    beforeDatasetsDraw: (at) => drawn?.under(plotOf(at)),
    afterDatasetsDraw: (at) => drawn?.over(plotOf(at)),
  };
  return {
    show: (picture) => {
      chart ??= new Chart<'line'>(canvas, {
        type: 'line',
        data: { datasets: [] },
        options: optionsOf(picture),
        plugins: [marks],
      });
      drawn = picture;
      if (chart.width !== picture.width || chart.height !== picture.height) chart.resize(picture.width, picture.height);
      // Dataset objects are reused, as the library keeps what it has built for each.
      const before = chart.data.datasets;
      chart.data.datasets = picture.lines.map((line, i) => Object.assign(before[i] ?? {}, lineSet(line)));
      chart.options = optionsOf(picture);
      chart.update('none');
    },
    close: () => chart?.destroy(),
  };
}
