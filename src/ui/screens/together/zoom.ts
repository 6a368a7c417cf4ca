import { createMemo, createSignal, type Accessor } from 'solid-js';
import type { Layout } from '../../../present/together/layout';

/** How large a picture is shown. */
export interface Zoom {
  /** Pixels on the screen for one of the picture. */
  readonly scale: Accessor<number>;
  /** Whether all of the picture is in sight, whatever its size. */
  readonly isFit: Accessor<boolean>;
  readonly fit: () => void;
  readonly actual: () => void;
  /** Larger by a step for 1, smaller for −1. */
  readonly step: (by: 1 | -1) => void;
}

/** Below this share of its actual size a picture cannot be read: one that is too wide is then not fitted unasked. */
const readable = 0.62;
const [least, most, factor] = [0.1, 2, 1.25];

/** @param room what there is for the picture, in pixels */
export function createZoom(
  layout: Accessor<Layout | undefined>,
  room: Accessor<{ readonly width: number; readonly height: number }>,
): Zoom {
  const [chosen, choose] = createSignal<number | 'fit'>();
  const fitting = createMemo(() => {
    const { width, height } = layout() ?? { width: 1, height: 1 };
    return Math.min(1, room().width / Math.max(1, width), room().height / Math.max(1, height));
  });
  const isFit = createMemo(() => chosen() === 'fit' || (chosen() === undefined && fitting() >= readable));
  const scale = createMemo(() => {
    const one = chosen();
    return isFit() ? fitting() : typeof one === 'number' ? one : 1;
  });
  return {
    scale,
    isFit,
    fit: () => choose('fit'),
    actual: () => choose(1),
    step: (by) => choose(Math.min(most, Math.max(least, scale() * factor ** by))),
  };
}
