import { createMemo, For, Show, type JSX } from 'solid-js';
import { decimal } from '../../../core/number';
import { ChartCanvas } from '../charts/ChartCanvas';
import { createChartArea } from '../charts/chartArea';
import { onLightGround } from '../charts/lightGround';
import { openLines } from '../charts/lines';
import type { ChartInk } from '../../../present/picture/ink';
import type { TakenParts } from '../../../present/picture/takenPicture';
import { heatKey } from '../../../present/heat/heatKey';
import type { LinesPicture } from '../../../present/picture/linesPicture';
import { localFormat } from '../../app/preferences/localFormat';
import { listedBands, startOf, writtenEdges, type HeatBands } from '../../../present/heat/bands';
import { heatPicture, type HeatDrawing } from '../../../present/heat/picture';
import { shadeShare, type Shades } from '../../../present/heat/shades';
import { shadesOf } from './readShades';
import { commonTexts } from '../../../present/text/commonTexts';
import { heatTexts } from '../../../present/heat/texts';
import './heat.css';

interface HeatChartProps {
  readonly drawing: HeatDrawing;
  /** The picture's finding, for screen readers. */
  readonly label: string;
  /** The result that is shaded, with its unit. */
  readonly what: string;
  /** The input of the vertical axis, with its unit. */
  readonly downTitle: string;
  /** What the hatched side means. */
  readonly worseText: string;
  /** Writes a result for the key, without its unit. */
  readonly write: (value: number) => string;
}

function heightFor(width: number): number {
  return Math.round(Math.min(440, Math.max(280, width * 0.62)));
}

function pictureOf(drawing: HeatDrawing, ink: ChartInk, width: number, shades: Shades): LinesPicture {
  return heatPicture(drawing, ink, shades, { width, height: heightFor(width) }, localFormat);
}

/** A result over two inputs, shaded in bands. */
export function HeatChart(props: HeatChartProps): JSX.Element {
  const chartArea = createChartArea();
  // The page's colours change with the area's.
  const pageShades = createMemo(() => (chartArea.ink() === undefined ? undefined : shadesOf(document.documentElement)));
  const draw = (ink: ChartInk, width: number): LinesPicture => pictureOf(props.drawing, ink, width, pageShades()!);
  const parts = (): TakenParts => {
    const shades = onLightGround(shadesOf);
    // Asked for when a button is pressed, with what is shown then.
    // eslint-disable-next-line solid/reactivity
    const { drawing, downTitle, worseText, write } = props;
    const isPartUnknown = hasUnknown();
    const texts = { downTitle, worseText: hasWorse() ? worseText : '', write, step: stepText(drawing.bands) };
    return {
      key: (ink) => heatKey(drawing, texts, isPartUnknown, shades, ink),
      draw: (ink, width) => pictureOf(drawing, ink, width, shades),
    };
  };
  const hasUnknown = createMemo(() => props.drawing.grid.values.flat().some((value) => Number.isNaN(value)));
  const hasWorse = (): boolean => {
    const {
      worse,
      bands: { first, last },
    } = props.drawing;
    return worse === 'below' ? first < 0 : last >= 0;
  };
  return (
    <figure class="heat">
      <figcaption class="key">
        <span class="key-what">{props.what}</span>
        <Scale bands={props.drawing.bands} worse={props.drawing.worse} write={props.write}>
          <Show when={hasWorse()}>
            <i class="heat-swatch worse" aria-hidden="true" /> {props.worseText}
          </Show>
        </Scale>
        <Show when={hasUnknown()}>
          <span>
            <i class="heat-swatch unknown" aria-hidden="true" /> {commonTexts.cannotCompute}
          </span>
        </Show>
      </figcaption>
      <p class="heat-down">
        <span aria-hidden="true">↑ </span>
        {props.downTitle}
      </p>
      <ChartCanvas
        chartArea={chartArea}
        title={props.what}
        label={props.label}
        open={openLines}
        draw={draw}
        parts={parts}
      />
    </figure>
  );
}

function stepText({ step }: HeatBands): string {
  return heatTexts.eachShade(localFormat.full(decimal(Number(step.toPrecision(12)))));
}

/** The key: the shades in a row, with the results at the labelled edges. */
function Scale(props: {
  bands: HeatBands;
  worse: 'below' | 'above';
  write: (value: number) => string;
  children: JSX.Element;
}): JSX.Element {
  const bands = createMemo(() => listedBands(props.bands));
  const isWorse = (band: number): boolean => band < 0 === (props.worse === 'below');
  const share = (band: number): string => `${(shadeShare(props.bands, band) * 100).toFixed(0)}%`;
  const edges = createMemo(() => writtenEdges(props.bands));
  const along = (edge: number): string => `${((edge - props.bands.first) / bands().length) * 100}%`;
  return (
    <span class="heat-scale">
      <span class="heat-bar">
        <span class="heat-shades" aria-hidden="true">
          <For each={bands()}>
            {(band) => <i class={isWorse(band) ? 'worse' : 'better'} style={{ '--share': share(band) }} />}
          </For>
        </span>
        <span class="heat-edges">
          <For each={edges()}>
            {(edge) => <span style={{ '--along': along(edge) }}>{props.write(startOf(props.bands, edge))}</span>}
          </For>
        </span>
      </span>
      <span class="heat-texts">
        <span>{props.children}</span>
        <span>{stepText(props.bands)}</span>
      </span>
    </span>
  );
}
