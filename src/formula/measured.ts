import { plain, type Dimension } from '../core/dimension';
import { decimal, numberToText } from '../core/number';
import { divide, isOne, one, parts, type Ratio } from '../core/ratio';
import type { Checked } from './checked';

/** A part of a formula with what is known of it. A number's value times its scale is the value in base units. */
export interface Measured {
  readonly kind: 'number' | 'truth';
  readonly node: Checked;
  /** Undefined for a literal 0 and what is made of such, which fits any unit. */
  readonly dimension: Dimension | undefined;
  readonly scale: Ratio;
  /** It is, or sums, cells whose unit carries a factor. */
  readonly factored: boolean;
}

export function number(node: Checked, dimension: Dimension | undefined, scale = one, factored = false): Measured {
  return { kind: 'number', node, dimension, scale, factored };
}

export function truth(node: Checked): Measured {
  return { kind: 'truth', node, dimension: plain, scale: one, factored: false };
}

function convertBy(node: Checked, by: Ratio): Checked {
  if (isOne(by)) return node;
  if (node.op !== 'number') return { op: 'convert', of: node, by };
  const { over, under } = parts(by);
  return { op: 'number', text: numberToText(decimal(node.text).times(over).dividedBy(under)) };
}

/** A part's node, converted so that its scale is the wanted one. */
export function inScale(part: Measured, wanted: Ratio): Checked {
  return part.dimension === undefined ? part.node : convertBy(part.node, divide(part.scale, wanted));
}

/** The scale in which values of one dimension meet: the finest, where all are whole multiples of it. */
export function meetingScale(measured: readonly Measured[]): Ratio {
  const scales = measured.filter(({ dimension }) => dimension !== undefined).map(({ scale }) => scale);
  return scales.find((scale) => scales.every((other) => divide(other, scale).under === 1n)) ?? one;
}
