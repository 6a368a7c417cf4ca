import type { Cell } from '../../model/cell';
import { space } from '../text/numberFormat';
import type { BoxValue } from './boxText';
import type { BoxSize } from './layout';
import { fitted, wrapped, type MeasureText } from './wrap';

/** Lengths in a box, in pixels of the picture at its actual size. */
export const boxPlan = {
  width: 172,
  /** The stripe at the left that tells the group. */
  stripe: 7,
  /** Between the stripe or the frame and a text. */
  margin: 8,
  /** Above the first line and below the last. */
  rim: 6,
  groupLine: 14,
  labelLine: 16,
  valueLine: 18,
  /** Of the label and of values, and of the group. */
  type: 13,
  smallType: 11,
  /** Of the label where the picture is small. */
  largeType: 23,
  largeLine: 25,
} as const;

const textWidth = boxPlan.width - boxPlan.stripe - 2 * boxPlan.margin;

/** A label in more lines than this is cut; it stands whole in the table and where the box is pointed at. */
const mostLines = 3;

/** The box of an entry: nothing in it depends on numbers, so that it stays as it is while somebody types. */
export interface EntryBox extends BoxSize {
  readonly cell: Cell;
  /** The group as far as it fits; blank for none. */
  readonly group: string;
  readonly label: readonly string[];
  /** The label in large type, for a picture so small that nothing else could be read. */
  readonly largeLabel: readonly string[];
  /** The columns of plans whose values it shows, one below the other. */
  readonly columns: readonly number[];
}

/**
 * @param columns those whose values differ or may differ; one where they cannot
 * @param measure widths at the size of `boxPlan.type`
 */
export function boxOf(cell: Cell, group: string, columns: readonly number[], measure: MeasureText): EntryBox {
  const sized =
    (type: number): MeasureText =>
    (text) =>
      (measure(text) * type) / boxPlan.type;
  const label = wrapped(cell.label, textWidth, mostLines, measure);
  const { rim, groupLine, labelLine, valueLine, largeLine, width } = boxPlan;
  const height = 2 * rim + (group === '' ? 0 : groupLine) + label.length * labelLine + columns.length * valueLine;
  const largeLines = Math.max(1, Math.floor((height - rim) / largeLine));
  return {
    id: cell.id,
    cell,
    group: fitted(group, textWidth, sized(boxPlan.smallType)),
    label,
    largeLabel: wrapped(cell.label, textWidth, largeLines, sized(boxPlan.largeType)),
    columns,
    width,
    height,
  };
}

/** A value and its unit as far as they fit beside a plan's letter. */
export function fittedValue({ value, unit }: BoxValue, letter: string, measure: MeasureText): BoxValue {
  const small: MeasureText = (text) => (measure(text) * boxPlan.smallType) / boxPlan.type;
  const room = textWidth - (letter === '' ? 0 : boxPlan.type);
  const gap = unit === '' ? 0 : measure(space);
  if (measure(value) + gap + small(unit) <= room) return { value, unit };
  const shortUnit = fitted(unit, room / 2, small);
  return { value: fitted(value, room - gap - small(shortUnit), measure), unit: shortUnit };
}
