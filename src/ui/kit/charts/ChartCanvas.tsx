import { createEffect, onCleanup, type JSX } from 'solid-js';
import type { ChartArea } from './chartArea';
import type { Drawing, Framed } from '../../../present/picture/plot';
import './canvas.css';

interface ChartCanvasProps<Picture extends Framed> {
  readonly chartArea: ChartArea;
  /** The chart's finding, for screen readers. */
  readonly label: string;
  /** Starts the chart. */
  readonly open: (canvas: HTMLCanvasElement) => Drawing<Picture>;
  /** Drawn at once whenever it changes; undefined until the chart's size and colours are known. */
  readonly picture: Picture | undefined;
  /** Elements that lie over the chart. */
  readonly children?: JSX.Element;
}

/** A chart on a canvas. */
export function ChartCanvas<Picture extends Framed>(props: ChartCanvasProps<Picture>): JSX.Element {
  let drawing: Drawing<Picture> | undefined;
  let canvas: HTMLCanvasElement | undefined;
  createEffect(() => {
    const picture = props.picture;
    if (canvas === undefined || picture === undefined || picture.width === 0) return;
    drawing ??= props.open(canvas);
    drawing.show(picture);
  });
  onCleanup(() => drawing?.close());
  return (
    <div class="chart" ref={(box) => props.chartArea.hold(box)} style={{ height: `${props.picture?.height ?? 0}px` }}>
      <canvas
        ref={(element) => {
          canvas = element;
        }}
        role="img"
        aria-label={props.label}
      />
      {props.children}
    </div>
  );
}
