import { Show, type JSX } from 'solid-js';
import { decimal, numberToText } from '../../core/number';
import { here } from '../here';
import { NumberField } from './NumberField';
import type { LookedAt } from './range';
import type { Stretch } from './sample';

interface RangeFieldsProps {
  readonly lookedAt: LookedAt;
  readonly unit: string;
  /** The part that is drawn. */
  readonly drawn: Stretch;
  readonly remark: string | undefined;
  /** Blank goes back to the usual end. */
  readonly onEnd: (end: 'from' | 'to', text: string) => void;
}

/** The range of the input that is looked at; someone's own range is drawn whole. */
export function RangeFields(props: RangeFieldsProps): JSX.Element {
  const ends = (): LookedAt['range'] => props.lookedAt.range;
  const isPart = (): boolean => props.drawn.from > ends().from.toNumber() || props.drawn.to < ends().to.toNumber();
  const usual = (): void => {
    props.onEnd('from', '');
    props.onEnd('to', '');
  };
  const whole = (): void => {
    const { from, to } = ends();
    props.onEnd('from', numberToText(from));
    props.onEnd('to', numberToText(to));
  };
  const shown = (value: number): string => here.full(decimal(Number(value.toPrecision(6))));
  return (
    <fieldset class="range-fields">
      <legend class="heard">Looked at</legend>
      <NumberField
        label="looked at from"
        unit=""
        text={numberToText(ends().from)}
        onNumber={(text) => props.onEnd('from', text)}
      />
      <NumberField
        label="to"
        unit={props.unit}
        text={numberToText(ends().to)}
        onNumber={(text) => props.onEnd('to', text)}
      />
      <Show when={props.lookedAt.own}>
        <button type="button" class="link" onClick={usual}>
          Usual range
        </button>
      </Show>
      <Show when={!props.lookedAt.own && isPart()}>
        <span class="drawn-part">
          Drawn from {shown(props.drawn.from)} to {shown(props.drawn.to)}.{' '}
          <button type="button" class="link" onClick={whole}>
            Draw all of it
          </button>
        </span>
      </Show>
      <Show when={props.remark}>
        <span class="drawn-part">{props.remark}</span>
      </Show>
      <Show when={props.lookedAt.problem}>
        <p class="message fault" role="alert">
          {props.lookedAt.problem}
        </p>
      </Show>
    </fieldset>
  );
}
