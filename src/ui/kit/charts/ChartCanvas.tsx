import { createEffect, createMemo, onCleanup, type JSX } from 'solid-js';
import { createChartArea, type ChartArea } from './chartArea';
import { TakeOut } from '../takeOut/TakeOut';
import type { Drawing, Framed } from '../../../present/picture/plot';
import type { Draw, DrawnPicture, TakenParts, TakenPicture } from '../../../present/picture/takenPicture';
import type { DataTable } from '../../../present/table/dataTable';
import './canvas.css';

interface ChartCanvasProps<Picture extends DrawnPicture & Framed> {
  /** The area, where others want to know of it too. */
  readonly chartArea?: ChartArea | undefined;
  /** What the chart shows, with its unit, for taking it out. */
  readonly title: string;
  /** The chart's finding, for screen readers. */
  readonly label: string;
  /** Starts the chart. */
  readonly open: (canvas: HTMLCanvasElement) => Drawing<Picture>;
  /** The picture in some colours and some width; drawn at once whenever it changes. */
  readonly draw: Draw<Picture>;
  /** What is added where the picture is taken out; loaded then, where the page must be quick. */
  readonly parts: () => Promise<TakenParts> | TakenParts;
  /** The picture's numbers, where no table on the page has all of them. */
  readonly table?: (() => DataTable) | undefined;
  /** Whether numbers are still to come. */
  readonly waits?: boolean | undefined;
  /** Elements that lie over the chart. */
  readonly children?: JSX.Element;
}

/** A chart on a canvas, and below it the button that takes it out. */
export function ChartCanvas<Picture extends DrawnPicture & Framed>(props: ChartCanvasProps<Picture>): JSX.Element {
  // The area stays the same as long as the chart does.
  // eslint-disable-next-line solid/reactivity
  const area = props.chartArea ?? createChartArea();
  const picture = createMemo(() => {
    const ink = area.ink();
    return ink && props.draw(ink, area.width());
  });
  const taken = async (): Promise<TakenPicture> => {
    // Asked for when a button is pressed, with what is shown then.
    // eslint-disable-next-line solid/reactivity
    const { title, label: sentence, draw } = props;
    return { title, sentence, draw, ...(await props.parts()) };
  };
  let drawing: Drawing<Picture> | undefined;
  let canvas: HTMLCanvasElement | undefined;
  createEffect(() => {
    const shown = picture();
    if (canvas === undefined || shown === undefined || shown.width === 0) return;
    drawing ??= props.open(canvas);
    drawing.show(shown);
  });
  onCleanup(() => drawing?.close());
  return (
    <>
      <div class="chart" ref={(box) => area.hold(box)} style={{ height: `${picture()?.height ?? 0}px` }}>
        <canvas
          ref={(element) => {
            canvas = element;
          }}
          role="img"
          aria-label={props.label}
        />
        {props.children}
      </div>
      <TakeOut caption={props.title} table={props.table} waits={props.waits} picture={taken} />
    </>
  );
}
