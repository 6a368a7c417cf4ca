import { createSignal, onCleanup, onMount, type Accessor } from 'solid-js';
import { watchSize } from '../../app/layout/watchSize';
import type { ChartInk } from '../../../present/picture/ink';
import { inkOf, watchInk } from './ink';

/** The element in which a chart is drawn: its width, its colours and type. */
export interface ChartArea {
  /** In pixels; 0 until the element is on the page. */
  readonly width: Accessor<number>;
  /** Undefined until the element is on the page. */
  readonly ink: Accessor<ChartInk | undefined>;
  hold(element: HTMLElement): void;
}

/** A chart area that follows changes of size, colour scheme, forced colours and print. */
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
    // Browsers report no resize when the page is laid out for print.
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
