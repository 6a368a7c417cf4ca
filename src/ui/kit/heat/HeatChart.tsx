import { createMemo, For, Show, type JSX } from 'solid-js';
import { decimal } from '../../../core/number';
import { ChartCanvas } from '../charts/ChartCanvas';
import { createChartArea } from '../charts/chartArea';
import { openLines } from '../charts/lines';
import type { LinesPicture } from '../../../present/picture/linesPicture';
import { localFormat } from '../../app/preferences/localFormat';
import { listedBands, startOf, writtenEdges, type HeatBands } from '../../../present/heat/bands';
import { heatPicture, type HeatDrawing } from '../../../present/heat/picture';
import { shadeShare } from '../../../present/heat/shades';
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

/** A result over two inputs, shaded in bands. */
export function HeatChart(props: HeatChartProps): JSX.Element {
  const chartArea = createChartArea();
  const shades = createMemo(() => (chartArea.ink() === undefined ? undefined : shadesOf(document.documentElement)));
  const picture = createMemo((): LinesPicture | undefined => {
    const [ink, colours] = [chartArea.ink(), shades()];
    if (ink === undefined || colours === undefined) return undefined;
    return heatPicture(
      props.drawing,
      ink,
      colours,
      { width: chartArea.width(), height: heightFor(chartArea.width()) },
      localFormat,
    );
  });
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
      <ChartCanvas chartArea={chartArea} label={props.label} open={openLines} picture={picture()} />
    </figure>
  );
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
        <span>{heatTexts.eachShade(localFormat.full(decimal(Number(props.bands.step.toPrecision(12)))))}</span>
      </span>
    </span>
  );
}
