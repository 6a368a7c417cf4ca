import { divide, multiply, one, parts, ratioPower, type Ratio } from '../../core/ratio';
import { parseUnit } from '../../core/unit';
import { field, type Sheet } from '../sheet';
import { numberColumns, withNumbers } from './money';
import { isTextRow, unitsInText } from './textColumns';

/** Systems of measures in which a model can be written. */
export const systems = ['metric', 'us'] as const;
export type System = (typeof systems)[number];

/** Units that take each other's place; several metric ones may go to one of the other system, the first comes back. */
const pairs: readonly (readonly [metric: string, us: string])[] = [
  ['cm', 'in'],
  ['mm', 'in'],
  ['m', 'ft'],
  ['ha', 'acre'],
  ['L', 'gal'],
  ['mL', 'gal'],
  ['kg', 'lb'],
  ['g', 'oz'],
];

function counterpart(name: string, to: System): string | undefined {
  const found = pairs.find((pair) => pair[to === 'us' ? 0 : 1] === name);
  return found?.[to === 'us' ? 1 : 0];
}

function scaleOf(name: string): Ratio {
  const unit = parseUnit(name, new Set());
  return 'code' in unit ? one : unit.scale;
}

const nameWithPower = /([*/]?)\s*([A-Za-z%][A-Za-z_]*|1)(?:\s*\^\s*(-?\d+))?/g;

/** A unit's text in the other system, and how many of the new units one of the old is. */
function converted(text: string, to: System): { text: string; factor: Ratio } {
  let factor = one;
  const changed = text.replaceAll(nameWithPower, (whole, mark: string, name: string, power: string | undefined) => {
    const other = counterpart(name, to);
    if (other === undefined) return whole;
    const exponent = Number(power ?? 1) * (mark === '/' ? -1 : 1);
    factor = multiply(factor, ratioPower(divide(scaleOf(name), scaleOf(other)), exponent));
    return `${mark}${other}${power === undefined ? '' : `^${power}`}`;
  });
  return { text: changed, factor };
}

/** A sheet in another system of measures, by the exact factors of the international yard and pound. */
export function inSystem(sheet: Sheet, to: System): Sheet {
  const columns = numberColumns(sheet);
  const inText = unitsInText(sheet, (unit) => converted(unit, to).text);
  const rows = sheet.rows.map((row) => {
    if (isTextRow(row)) return inText(row);
    const unit = field(row, 'unit');
    const { text, factor } = converted(unit, to);
    if (text === unit) return row;
    const { over, under } = parts(factor);
    return withNumbers(row, columns, text, (value) => value.times(over).div(under));
  });
  return { ...sheet, rows };
}

/** Whether a sheet has a unit that the other system would write otherwise. */
export function hasUnitsOf(sheet: Sheet, system: System): boolean {
  const to: System = system === 'metric' ? 'us' : 'metric';
  return sheet.rows.some((row) => converted(field(row, 'unit'), to).text !== field(row, 'unit'));
}
