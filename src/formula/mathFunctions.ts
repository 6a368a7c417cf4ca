import { wording } from '../language/wording';
import { halved, plain } from '../core/dimension';
import {
  fits,
  inBaseUnits,
  isCount,
  isPlain,
  many,
  nth,
  outside,
  record,
  type Argument,
  type FormulaFunction,
  type Reason,
  type Typing,
} from './function';

/** A unit rule, in words and as the check takes it. */
type UnitRule = Pick<FormulaFunction, 'units' | 'typing'>;

/** Arguments of one dimension, which the result keeps. */
const keepsKind: UnitRule = {
  units: wording`Takes values of one kind in any unit, and gives that kind.`,
  typing: (args, name) => {
    const dimension = args.find((arg) => arg.dimension !== undefined)?.dimension;
    const alike = dimension === undefined || args.every((arg) => fits(arg, dimension));
    return alike ? { dimension, scale: 'common' } : wording`${name} takes values of one kind only`;
  },
};

const plainOnly: UnitRule = {
  units: wording`Takes plain numbers and gives a plain number.`,
  typing: (args, name) => inBaseUnits(args.every(isPlain), plain, wording`${name} takes plain numbers only`),
};

function wholeRule([value]: readonly Argument[], name: string): Typing | string {
  if (value?.factored === true && isCount(value))
    return wording`${name} does not round a value whose unit carries a factor; divide by a cell in that unit first`;
  return inBaseUnits(
    value !== undefined && isCount(value),
    value?.dimension,
    wording`${name} takes plain numbers or counts only`,
  );
}

const countOnly: UnitRule = {
  units: wording`Takes a plain number or a count, such as plant/board, and gives the same. A value whose unit carries a factor, such as % or week, has to be divided by an entry in that unit first.`,
  typing: wholeRule,
};

function roundRule(args: readonly Argument[], name: string): Typing | string {
  const decimals = args[1];
  const allowed =
    decimals === undefined || (decimals.literal !== undefined && decimals.literal >= 0 && decimals.literal <= 15);
  return allowed ? wholeRule(args, name) : wording`${name} takes its decimals as a written whole number from 0 to 15`;
}

const noLogarithm = (): Reason => outside(wording`logarithm of a number not above 0`);

/** Functions of plain arithmetic. */
export const mathFunctions = [
  record({
    name: 'abs',
    signature: 'abs(x)',
    summary: wording`Size without the sign.`,
    ...keepsKind,
    examples: [{ formula: 'abs(-3)', gives: '3' }],
    arity: [1, 1],
    compute: (m, args) => m.absolute(nth(args, 0)),
  }),
  record({
    name: 'min',
    signature: 'min(a, …)',
    summary: wording`The smallest of values of one kind.`,
    ...keepsKind,
    examples: [
      { formula: 'min(3, 2, 5)', gives: '2' },
      {
        formula: 'min(harvest, market)',
        gives: '900',
        unit: 'head/week',
        cells: [
          ['harvest', '1200', 'head/week'],
          ['market', '900', 'head/week'],
        ],
      },
    ],
    arity: [1, many],
    compute: (m, args) => args.reduce((a, b) => m.smaller(a, b)),
  }),
  record({
    name: 'max',
    signature: 'max(a, …)',
    summary: wording`The largest of values of one kind.`,
    ...keepsKind,
    examples: [
      { formula: 'max(3, 2, 5)', gives: '5' },
      {
        formula: 'max(0, needed - spare)',
        gives: '6',
        unit: 'h/week',
        cells: [
          ['needed', '26', 'h/week'],
          ['spare', '20', 'h/week'],
        ],
      },
    ],
    arity: [1, many],
    compute: (m, args) => args.reduce((a, b) => m.larger(a, b)),
  }),
  record({
    name: 'sqrt',
    signature: 'sqrt(x)',
    summary: wording`Square root.`,
    units: wording`Takes a value whose unit has even powers only, such as m^2, and halves each power.`,
    examples: [
      { formula: 'sqrt(9)', gives: '3' },
      { formula: 'sqrt(bed_area)', gives: '6', unit: 'm', cells: [['bed_area', '36', 'm^2']] },
    ],
    arity: [1, 1],
    compute: (m, args) => m.squareRoot(nth(args, 0)),
    typing: ([x], name) => {
      const half = x?.dimension === undefined ? plain : halved(x.dimension);
      return inBaseUnits(half !== undefined, half, wording`${name} takes a value whose unit has even powers only`);
    },
    reason: () => outside(wording`square root of a negative number`),
  }),
  record({
    name: 'exp',
    signature: 'exp(x)',
    summary: wording`e to the power x.`,
    ...plainOnly,
    examples: [{ formula: 'exp(0)', gives: '1' }],
    arity: [1, 1],
    compute: (m, args) => m.exponential(nth(args, 0)),
  }),
  record({
    name: 'log',
    signature: 'log(x)',
    summary: wording`Natural logarithm.`,
    ...plainOnly,
    examples: [{ formula: 'log(1)', gives: '0' }],
    arity: [1, 1],
    compute: (m, args) => m.logarithm(nth(args, 0)),
    reason: noLogarithm,
  }),
  record({
    name: 'log10',
    signature: 'log10(x)',
    summary: wording`Logarithm to base 10.`,
    ...plainOnly,
    examples: [{ formula: 'log10(1000)', gives: '3' }],
    arity: [1, 1],
    compute: (m, args) => m.logarithm10(nth(args, 0)),
    reason: noLogarithm,
  }),
  record({
    name: 'floor',
    signature: 'floor(x)',
    summary: wording`The next whole number down.`,
    ...countOnly,
    examples: [
      { formula: 'floor(-2.5)', gives: '-3' },
      { formula: 'floor(1/3*3)', gives: '1' },
      {
        formula: 'floor(stay / one_week)',
        gives: '3',
        cells: [
          ['stay', '25', 'day'],
          ['one_week', '1', 'week'],
        ],
      },
    ],
    arity: [1, 1],
    compute: (m, args) => m.floor(nth(args, 0)),
  }),
  record({
    name: 'ceil',
    signature: 'ceil(x)',
    summary: wording`The next whole number up.`,
    ...countOnly,
    examples: [
      { formula: 'ceil(2.1)', gives: '3' },
      {
        formula: 'ceil(plants / holes)',
        gives: '9',
        unit: 'board',
        cells: [
          ['plants', '200', 'plant'],
          ['holes', '24', 'plant/board'],
        ],
      },
    ],
    arity: [1, 1],
    compute: (m, args) => m.ceil(nth(args, 0)),
  }),
  record({
    name: 'round',
    signature: 'round(x, n)',
    summary: wording`Rounded to n decimals (none: whole), half away from zero.`,
    units: wording`${countOnly.units} The decimals n are a written whole number from 0 to 15.`,
    examples: [
      { formula: 'round(-2.5)', gives: '-3' },
      { formula: 'round(2.345, 2)', gives: '2.35' },
    ],
    arity: [1, 2],
    typing: roundRule,
    compute: (m, args) => m.round(nth(args, 0), args.length > 1 ? m.toNumber(nth(args, 1)) : 0),
  }),
];
