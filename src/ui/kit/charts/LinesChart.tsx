import { createMemo, type JSX } from 'solid-js';
import { ChartCanvas } from './ChartCanvas';
import { createChartArea } from './chartArea';
import { cut, linesPicture, type LinesDrawing } from '../../../present/picture/labelledLines';
import { openLines } from './lines';
import type { LinesPicture } from '../../../present/picture/linesPicture';
import { localFormat } from '../../app/preferences/localFormat';
import './curve.css';
import './key.css';

interface LinesChartProps {
  /** Lines labelled by name; the chart puts a number, or the line's mark, before each name. */
  readonly drawing: LinesDrawing;
  /** The chart's finding, for screen readers. */
  readonly label: string;
  /** What the vertical axis shows, with its unit. */
  readonly caption: string;
  /** The key below the chart. */
  readonly children: JSX.Element;
}

/** From this width in pixels on there is room for names beside the plot. */
const wide = 520;
/** Largest share of the width for names. */
const mostRoom = 0.3;

function heightFor(width: number): number {
  return Math.round(Math.min(400, Math.max(260, width * 0.55)));
}

/** A chart of lines with their names at their ends, or only their numbers or marks where there is no room. */
export function LinesChart(props: LinesChartProps): JSX.Element {
  const chartArea = createChartArea();
  const picture = createMemo((): LinesPicture | undefined => {
    const ink = chartArea.ink();
    if (ink === undefined) return undefined;
    const width = chartArea.width();
    const { measure } = ink;
    const lines = props.drawing.lines.map((line, i) => {
      const number = line.mark ?? String(i + 1);
      return { ...line, label: width < wide ? number : cut(`${number} ${line.label}`, width * mostRoom, measure) };
    });
    const labelRoom = Math.max(...lines.map(({ label }) => measure(label)));
    return linesPicture({ ...props.drawing, lines }, ink, { width, height: heightFor(width) }, labelRoom, localFormat);
  });
  return (
    <figure class="curve">
      <figcaption class="key">
        <span class="key-what">{props.caption}</span>
      </figcaption>
      <ChartCanvas chartArea={chartArea} label={props.label} open={openLines} picture={picture()} />
      {props.children}
    </figure>
  );
}
