import { createMemo, type JSX } from 'solid-js';
import { ChartCanvas } from '../chart/ChartCanvas';
import { createEasel } from '../chart/easel';
import { cut, linesPicture, type LinesDrawing } from '../chart/labelledLines';
import { openLines, type LinesPicture } from '../chart/lines';
import { measureIn } from '../chart/measure';
import { here } from '../here';
import '../breakeven/breakeven.css';
import './lineKey.css';

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
  const easel = createEasel();
  const picture = createMemo((): LinesPicture | undefined => {
    const ink = easel.ink();
    if (ink === undefined) return undefined;
    const width = easel.width();
    const measure = measureIn(ink);
    const lines = props.drawing.lines.map((line, i) => {
      const number = String(i + 1);
      return { ...line, label: width < wide ? number : cut(`${number} ${line.label}`, width * mostRoom, measure) };
    });
    const labelRoom = Math.max(...lines.map(({ label }) => measure(label)));
    return linesPicture({ ...props.drawing, lines }, ink, { width, height: heightFor(width) }, labelRoom, here);
  });
  return (
    <figure class="curve">
      <figcaption class="key">
        <span class="key-what">{props.caption}</span>
      </figcaption>
      <ChartCanvas easel={easel} label={props.label} open={openLines} picture={picture()} />
      {props.children}
    </figure>
  );
}
