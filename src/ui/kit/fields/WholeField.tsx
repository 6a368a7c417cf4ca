import type { JSX } from 'solid-js';
import { localFormat } from '../../app/preferences/localFormat';
import { typedWhole, type WholeLimits } from '../../../present/text/wholeNumber';
import { AskedNumber } from './AskedNumber';

interface WholeFieldProps {
  readonly label: string;
  readonly number: number;
  readonly limits: WholeLimits;
  readonly onNumber: (number: number) => void;
}

/** A field for a whole number of a screen. Invalid text stays in the field with an explanation. */
export function WholeField(props: WholeFieldProps): JSX.Element {
  const read = (typed: string): { text: string } | { fault: string } => {
    const found = typedWhole(typed, props.limits, localFormat);
    return 'fault' in found ? found : { text: String(found.number) };
  };
  return (
    <AskedNumber
      label={props.label}
      keyboard="numeric"
      text={String(props.number)}
      read={read}
      onNumber={(text) => props.onNumber(Number(text))}
    />
  );
}
