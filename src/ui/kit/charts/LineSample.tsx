import type { JSX } from 'solid-js';

interface LineSampleProps {
  readonly leading: boolean;
  /** Lengths of strokes and gaps in pixels; undefined or empty: the line is solid. */
  readonly dash: readonly number[] | undefined;
}

/** A piece of a chart's line, as its key shows it. */
export function LineSample(props: LineSampleProps): JSX.Element {
  return (
    <svg viewBox="0 0 44 8" width="44" height="8" aria-hidden="true">
      <line
        x1="0"
        y1="4"
        x2="44"
        y2="4"
        stroke="currentColor"
        stroke-width={props.leading ? 3 : 1.75}
        stroke-dasharray={props.dash?.join(' ')}
      />
    </svg>
  );
}
