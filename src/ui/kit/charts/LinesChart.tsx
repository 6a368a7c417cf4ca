import type { JSX } from 'solid-js';
import { ChartCanvas } from './ChartCanvas';
import { cut, linesPicture, markOf, type LinesDrawing } from '../../../present/picture/labelledLines';
import { openLines } from './lines';
import type { LinesPicture } from '../../../present/picture/linesPicture';
import type { ChartInk } from '../../../present/picture/ink';
import { linesKey } from '../../../present/picture/linesKey';
import type { DataTable } from '../../../present/table/dataTable';
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
  /** Its numbers, for taking them out. */
  readonly table?: (() => DataTable) | undefined;
  /** Whether numbers are still to come. */
  readonly waits?: boolean | undefined;
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
  const draw = (ink: ChartInk, width: number): LinesPicture => {
    const { measure } = ink;
    const lines = props.drawing.lines.map((line, i) => {
      const number = markOf(line, i);
      return { ...line, label: width < wide ? number : cut(`${number} ${line.label}`, width * mostRoom, measure) };
    });
    const labelRoom = Math.max(...lines.map(({ label }) => measure(label)));
    return linesPicture({ ...props.drawing, lines }, ink, { width, height: heightFor(width) }, labelRoom, localFormat);
  };
  return (
    <figure class="curve">
      <figcaption class="key">
        <span class="key-what">{props.caption}</span>
      </figcaption>
      <ChartCanvas
        title={props.caption}
        label={props.label}
        table={props.table}
        waits={props.waits}
        open={openLines}
        draw={draw}
        parts={() => ({ key: (ink) => linesKey(props.drawing, ink) })}
      />
      {props.children}
    </figure>
  );
}
