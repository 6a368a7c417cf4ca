import type { JSX } from 'solid-js';
import { localFormat } from '../../app/preferences/localFormat';
import { typedNumber } from '../../../present/text/typedNumber';
import { AskedNumber } from './AskedNumber';

interface NumberFieldProps {
  readonly label: string;
  readonly unit: string;
  /** The number that stands, as model files write it. */
  readonly text: string;
  /** Why a number cannot be used; undefined: it can. */
  readonly refuse?: (text: string) => string | undefined;
  /** Said after what is wrong. */
  readonly stands?: string;
  readonly onNumber: (text: string) => void;
}

/** A number that a screen asks for; what is not valid stays in the field and is explained, the last number stands. */
export function NumberField(props: NumberFieldProps): JSX.Element {
  const read = (typed: string): { text: string } | { fault: string } => {
    const found = typedNumber(typed, localFormat, props.text);
    if (!('text' in found)) return { fault: found.message };
    const fault = props.refuse?.(found.text) ?? '';
    return fault === '' ? found : { fault };
  };
  return <AskedNumber {...props} keyboard="decimal" read={read} />;
}
