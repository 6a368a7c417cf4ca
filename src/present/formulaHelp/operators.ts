import { wording } from '../../language/wording';
import type { Example, ExampleCell } from '../../formula/example';

/** A sign of formulas: what it means, its precedence, and what it takes. */
export interface Operator {
  /** The sign as it is written, with blanks or dots in the place of values. */
  readonly sign: string;
  readonly meaning: string;
  /** Order of evaluation: 1 comes first; of equals the left one, unless the meaning says otherwise. */
  readonly precedence: number;
  /** What it takes and gives. */
  readonly takes: string;
  readonly example: Example;
}

const oneUnit = wording`Takes two numbers of one kind, in any of its units, such as week and day, and gives that kind.`;
const compares = wording`Takes two numbers of one kind and gives true or false.`;
const conditions = wording`Takes two conditions and gives true or false.`;

const week: ExampleCell = ['stay', '2', 'week'];
const day: ExampleCell = ['turnaround', '3', 'day'];
const side: ExampleCell = ['side', '1.2', 'm'];
const price: ExampleCell = ['price', '0.8', 'EUR/head'];
const heads: ExampleCell = ['heads', '5000', 'head/week'];
const cost: ExampleCell = ['cost', '0.65', 'EUR/head'];
const market: ExampleCell = ['market', '4500', 'head/week'];

function comparison(sign: string, meaning: string, gives: 'true' | 'false'): Operator {
  const example = { formula: `stay ${sign} turnaround`, gives, cells: [week, day] };
  return { sign, meaning, precedence: 6, takes: compares, example };
}

/** Every sign, in order of precedence. */
export const operators: readonly Operator[] = [
  {
    sign: '( )',
    meaning: wording`What stands in brackets is done first.`,
    precedence: 1,
    takes: wording`Takes anything and gives it.`,
    example: { formula: '(2 + 3) * 4', gives: '20' },
  },
  {
    sign: '^',
    meaning: wording`To the power of. The right one comes first: 2 ^ 3 ^ 2 is 2 ^ 9.`,
    precedence: 2,
    takes: wording`Takes plain numbers, or a number in a unit and a written whole power, which raises the unit as well.`,
    example: { formula: 'side ^ 2', gives: '1.44', unit: 'm^2', cells: [side] },
  },
  {
    sign: '-…',
    meaning: wording`The opposite, before a value. A power comes before it: -2 ^ 2 is -4.`,
    precedence: 3,
    takes: wording`Takes a number in any unit and gives that kind.`,
    example: { formula: '-2 ^ 2', gives: '-4' },
  },
  {
    sign: 'not',
    meaning: wording`True where the condition is false.`,
    precedence: 3,
    takes: wording`Takes a condition, in brackets where it is a comparison, and gives true or false.`,
    example: { formula: 'not (stay > turnaround)', gives: 'false', cells: [week, day] },
  },
  {
    sign: '*',
    meaning: wording`Times.`,
    precedence: 4,
    takes: wording`Takes numbers in any units and gives the product of the units, converted to the unit of the entry.`,
    example: { formula: 'price * heads', gives: '4000', unit: 'EUR/week', cells: [price, heads] },
  },
  {
    sign: '/',
    meaning: wording`Divided by. Nothing can be divided by 0.`,
    precedence: 4,
    takes: wording`Takes numbers in any units and gives the quotient of the units; two of one kind give a plain number.`,
    example: { formula: 'stay / turnaround * 3', gives: '14', cells: [week, day] },
  },
  {
    sign: '+',
    meaning: wording`Plus.`,
    precedence: 5,
    takes: wording`${oneUnit} A written 0 fits any kind.`,
    example: { formula: 'stay + turnaround', gives: '17', unit: 'day', cells: [week, day] },
  },
  {
    sign: '-',
    meaning: wording`Minus.`,
    precedence: 5,
    takes: wording`${oneUnit} A written 0 fits any kind.`,
    example: { formula: 'price - cost', gives: '0.15', unit: 'EUR/head', cells: [price, cost] },
  },
  comparison('<', wording`Below.`, 'false'),
  comparison('<=', wording`At most.`, 'false'),
  comparison('>', wording`Above.`, 'true'),
  comparison('>=', wording`At least.`, 'true'),
  comparison('==', wording`Equal: two numbers are that when they differ by at most 1e-12 of the larger.`, 'false'),
  comparison('!=', wording`Not equal.`, 'true'),
  {
    sign: 'and',
    meaning: wording`True where both are true. The second is not looked at where the first is false.`,
    precedence: 7,
    takes: conditions,
    example: { formula: 'price > cost and heads <= market', gives: 'false', cells: [price, cost, heads, market] },
  },
  {
    sign: 'or',
    meaning: wording`True where at least one is true. The second is not looked at where the first is true.`,
    precedence: 8,
    takes: conditions,
    example: { formula: 'price > cost or heads <= market', gives: 'true', cells: [price, cost, heads, market] },
  },
  {
    sign: '… ? … : …',
    meaning: wording`The first value where the condition is true, else the second. Only the one chosen is computed.`,
    precedence: 9,
    takes: wording`Takes a condition, then two numbers of one kind or two conditions, and gives that kind.`,
    example: {
      formula: 'heads > market ? market : heads',
      gives: '4500',
      unit: 'head/week',
      cells: [heads, market],
    },
  },
];
