import { createMemo, createSignal, type Accessor } from 'solid-js';
import type { Layout } from '../../../present/together/layout';

/** What is written in boxes: all of it, labels alone in large type, or nothing where not even these could be read. */
export type Detail = 'all' | 'labels' | 'none';

/** How large a picture is shown. */
export interface Zoom {
  /** Pixels on the screen for one of the picture. */
  readonly scale: Accessor<number>;
  /** Whether all of the picture is in sight, whatever its size. */
  readonly isFit: Accessor<boolean>;
  readonly detail: Accessor<Detail>;
  readonly fit: () => void;
  readonly actual: () => void;
  /** Larger by a step for 1, smaller for −1. */
  readonly step: (by: 1 | -1) => void;
}

interface Zoomed {
  readonly layout: Accessor<Layout | undefined>;
  /** What there is for the picture, in pixels. */
  readonly room: Accessor<{ readonly width: number; readonly height: number }>;
  /** Whether the picture is of a whole model, which is seen whole at first. */
  readonly isWhole: Accessor<boolean>;
  /** On paper all of the picture is shown, and small type is sharper. */
  readonly printing: Accessor<boolean>;
}

/** Around an entry, a picture that would have to be smaller than this is not fitted unasked. */
const readable = 0.62;
/** Scales below which there are only labels, and below which there are none. */
const [labels, none] = [0.5, 0.22];
const [least, most, factor] = [0.1, 2, 1.25];

export function createZoom({ layout, room, isWhole, printing }: Zoomed): Zoom {
  const [chosen, choose] = createSignal<number | 'fit'>();
  const fitting = createMemo(() => {
    const { width, height } = layout() ?? { width: 1, height: 1 };
    return Math.min(1, room().width / Math.max(1, width), room().height / Math.max(1, height));
  });
  const isFit = createMemo(() => {
    const usual = isWhole() || fitting() >= readable;
    return printing() || chosen() === 'fit' || (chosen() === undefined && usual);
  });
  const scale = createMemo(() => {
    const one = chosen();
    return isFit() ? fitting() : typeof one === 'number' ? one : 1;
  });
  const detail = createMemo<Detail>(() => {
    if (scale() >= labels) return 'all';
    return scale() >= none || printing() ? 'labels' : 'none';
  });
  return {
    scale,
    isFit,
    detail,
    fit: () => choose('fit'),
    actual: () => choose(1),
    step: (by) => choose(Math.min(most, Math.max(least, scale() * factor ** by))),
  };
}
