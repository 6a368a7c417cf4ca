import { createMemo, type JSX } from 'solid-js';
import { numberToText, type Decimal } from '../../../core/number';
import type { Range } from '../../../model/cell';
import { localFormat } from '../../app/preferences/localFormat';
import { entryTexts } from '../../../present/numbers/entryTexts';
import { spokenMark } from '../../../present/numbers/spokenField';
import { isOutside, moved, pageSteps, rangeShare, rangeStep, valueAt } from '../../../present/numbers/rangeSteps';

interface RangeMarkProps {
  readonly label: string;
  readonly unit: string;
  readonly range: Range;
  readonly step: Decimal | undefined;
  readonly value: Decimal;
  /** Called with each value while the mark moves. */
  readonly onMove: (value: Decimal) => void;
  /** Called when the mark comes to rest. */
  readonly onRest: () => void;
}

const keys: Record<string, (range: Range, value: Decimal, step: Decimal) => Decimal> = {
  ArrowRight: (range, value, step) => moved(range, value, step, 1),
  ArrowUp: (range, value, step) => moved(range, value, step, 1),
  ArrowLeft: (range, value, step) => moved(range, value, step, -1),
  ArrowDown: (range, value, step) => moved(range, value, step, -1),
  PageUp: (range, value, step) => moved(range, value, step, pageSteps),
  PageDown: (range, value, step) => moved(range, value, step, -pageSteps),
  Home: ({ low }) => low,
  End: ({ high }) => high,
};

function shareUnder(event: PointerEvent, track: Element): number {
  const { left, width } = track.getBoundingClientRect();
  return width === 0 ? 0.5 : (event.clientX - left) / width;
}

/** An input's range as a thin line with a mark at the input's number (WAI-ARIA slider pattern). */
export function RangeMark(props: RangeMarkProps): JSX.Element {
  let track: HTMLDivElement | undefined;
  let mark: HTMLDivElement | undefined;
  const step = createMemo(() => rangeStep(props.range, props.step));
  const outside = createMemo(() => isOutside(props.range, props.value));
  const end = (value: Decimal): string => localFormat.written(numberToText(value));
  const follow = (event: PointerEvent): void => {
    if (track === undefined || mark?.hasPointerCapture(event.pointerId) !== true) return;
    const value = valueAt(props.range, step(), shareUnder(event, track));
    if (!value.eq(props.value)) props.onMove(value);
  };
  const onPointerDown = (event: PointerEvent): void => {
    if (event.button !== 0) return;
    event.preventDefault();
    mark?.focus();
    mark?.setPointerCapture(event.pointerId);
    follow(event);
  };
  return (
    <div class="range" classList={{ outside: outside() }}>
      <span class="range-end" aria-hidden="true">
        {end(props.range.low)}
      </span>
      <div
        class="range-track"
        ref={track}
        onPointerDown={onPointerDown}
        onPointerMove={follow}
        onPointerUp={() => props.onRest()}
        onPointerCancel={() => props.onRest()}>
        <Mark {...props} ref={mark} step={step()} outside={outside()} />
      </div>
      <span class="range-end" aria-hidden="true">
        {end(props.range.high)}
      </span>
    </div>
  );
}

interface MarkProps extends Omit<RangeMarkProps, 'step'> {
  readonly ref: HTMLDivElement | undefined;
  readonly step: Decimal;
  readonly outside: boolean;
}

/** The mark on the line, which keys can move. */
function Mark(props: MarkProps): JSX.Element {
  const onKeyDown = (event: KeyboardEvent): void => {
    const move = event.ctrlKey || event.metaKey || event.altKey ? undefined : keys[event.key];
    if (move === undefined) return;
    event.preventDefault();
    const value = move(props.range, props.value, props.step);
    if (!value.eq(props.value)) props.onMove(value);
  };
  return (
    <div
      class="range-mark"
      ref={props.ref}
      role="slider"
      tabindex="0"
      aria-label={entryTexts.rangeOf(props.label)}
      aria-orientation="horizontal"
      aria-valuemin={Math.min(props.range.low.toNumber(), props.value.toNumber())}
      aria-valuemax={Math.max(props.range.high.toNumber(), props.value.toNumber())}
      aria-valuenow={props.value.toNumber()}
      aria-valuetext={spokenMark(props.value, props.unit, props.outside, localFormat)}
      style={{ left: `${rangeShare(props.range, props.value) * 100}%` }}
      onKeyDown={onKeyDown}
      onKeyUp={() => props.onRest()}
      onBlur={() => props.onRest()}
    />
  );
}
