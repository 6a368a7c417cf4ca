import { createMemo, type Accessor } from 'solid-js';
import { usualInput } from '../../../present/breakeven/usualInput';
import type { ScreenProps } from '../../app/screenProps';

/** The name of the input asked about: the one chosen, else the usual one of the result. */
export function createInputAsked(props: Pick<ScreenProps, 'store' | 'plan' | 'choice'>): Accessor<string> {
  const asked = createMemo(
    () => props.choice.input() ?? usualInput(props.store.shape(), props.plan, props.choice.result()),
  );
  return asked;
}
