import { createSignal, onCleanup, onMount, type Accessor } from 'solid-js';
import { watchSize } from '../../app/layout/watchSize';
import type { ChartInk } from '../../../present/picture/ink';
import { inkOf, watchInk } from './ink';

/** The place that a chart is drawn in, which says how wide it is and with what it is drawn. */
export interface ChartArea {
  /** Pixels; 0 until it is on the page. */
  readonly width: Accessor<number>;
  /** Undefined until it is on the page. */
  readonly ink: Accessor<ChartInk | undefined>;
  hold(element: HTMLElement): void;
}

/** A place that follows its size, the scheme, forced colours and print. */
export function createChartArea(): ChartArea {
  const [width, setWidth] = createSignal(0);
  const [ink, setInk] = createSignal<ChartInk>();
  let element: HTMLElement | undefined;
  onMount(() => {
    const held = element;
    if (held === undefined) return;
    const measure = (): void => {
      setWidth(held.clientWidth);
    };
    const readInk = (): void => {
      setInk(inkOf(held));
    };
    watchSize(held, measure);
    // No resize is told of on the way to paper.
    const paper = matchMedia('print');
    paper.addEventListener('change', measure);
    measure();
    readInk();
    const stop = watchInk(readInk);
    onCleanup(() => {
      paper.removeEventListener('change', measure);
      stop();
    });
  });
  return {
    width,
    ink,
    hold: (held) => {
      element = held;
    },
  };
}
