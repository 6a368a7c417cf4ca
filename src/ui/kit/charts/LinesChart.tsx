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
  /** Its lines are labelled with names alone: their numbers are put in front. */
  readonly drawing: LinesDrawing;
  /** The finding. */
  readonly label: string;
  /** What the heights are, with their unit. */
  readonly caption: string;
  /** The key below the chart. */
  readonly children: JSX.Element;
}

/** From here up there is room for names beside the plot, in pixels. */
const wide = 520;
/** Share of the width that names may take. */
const mostRoom = 0.3;

function heightFor(width: number): number {
  return Math.round(Math.min(400, Math.max(260, width * 0.55)));
}

/** Lines with their names at their ends, where there is room, or else their numbers. */
export function LinesChart(props: LinesChartProps): JSX.Element {
  const chartArea = createChartArea();
  const picture = createMemo((): LinesPicture | undefined => {
    const ink = chartArea.ink();
    if (ink === undefined) return undefined;
    const width = chartArea.width();
    const { measure } = ink;
    const lines = props.drawing.lines.map((line, i) => {
      const number = String(i + 1);
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
