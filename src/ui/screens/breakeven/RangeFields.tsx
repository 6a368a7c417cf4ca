import { Show, type JSX } from 'solid-js';
import { decimal, numberToText } from '../../../core/number';
import { localFormat } from '../../app/preferences/localFormat';
import { NumberField } from '../../kit/fields/NumberField';
import type { ShownRange } from '../../../present/breakeven/range';
import type { InputInterval } from '../../../present/breakeven/curve/sample';
import { rangeTexts } from '../../../present/breakeven/texts';

interface RangeFieldsProps {
  readonly selected: ShownRange;
  readonly unit: string;
  /** The part of the range that is drawn. */
  readonly visible: InputInterval;
  readonly remark: string | undefined;
  /** Sets an end; blank goes back to the usual one. */
  readonly onEnd: (end: 'from' | 'to', text: string) => void;
}

/** Fields for the range of the input that is searched; a range that someone has set is drawn whole. */
export function RangeFields(props: RangeFieldsProps): JSX.Element {
  const ends = (): ShownRange['range'] => props.selected.range;
  const isPart = (): boolean => props.visible.from > ends().from.toNumber() || props.visible.to < ends().to.toNumber();
  const usual = (): void => {
    props.onEnd('from', '');
    props.onEnd('to', '');
  };
  const whole = (): void => {
    const { from, to } = ends();
    props.onEnd('from', numberToText(from));
    props.onEnd('to', numberToText(to));
  };
  const shown = (value: number): string => localFormat.full(decimal(Number(value.toPrecision(6))));
  return (
    <fieldset class="range-fields">
      <legend class="heard">{rangeTexts.legend}</legend>
      <NumberField
        label={rangeTexts.from}
        unit=""
        text={numberToText(ends().from)}
        onNumber={(text) => props.onEnd('from', text)}
      />
      <NumberField
        label={rangeTexts.to}
        unit={props.unit}
        text={numberToText(ends().to)}
        onNumber={(text) => props.onEnd('to', text)}
      />
      <Show when={props.selected.own}>
        <button type="button" class="link" onClick={usual}>
          {rangeTexts.usual}
        </button>
      </Show>
      <Show when={!props.selected.own && isPart()}>
        <span class="drawn-part">
          {rangeTexts.drawn(shown(props.visible.from), shown(props.visible.to))}{' '}
          <button type="button" class="link" onClick={whole}>
            {rangeTexts.whole}
          </button>
        </span>
      </Show>
      <Show when={props.remark}>
        <span class="drawn-part">{props.remark}</span>
      </Show>
      <Show when={props.selected.problem}>
        <p class="message fault" role="alert">
          {props.selected.problem}
        </p>
      </Show>
    </fieldset>
  );
}
