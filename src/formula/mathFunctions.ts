import { halved, plain } from '../core/dimension';
import { fits, isCount, many, nth, onlyPlain, outside, record, type Argument, type Typing } from './function';

/** Arguments of one dimension, which the result keeps. */
function keep(args: readonly Argument[]): Typing | string {
  const dimension = args.find((arg) => arg.dimension !== undefined)?.dimension;
  const alike = dimension === undefined || args.every((arg) => fits(arg, dimension));
  return alike ? { dimension, scale: 'common' } : 'takes values of one kind only';
}

function wholeRule([value]: readonly Argument[]): Typing | string {
  if (value === undefined || !isCount(value)) return 'takes plain numbers or counts only';
  if (value.factored) return 'does not round a value whose unit carries a factor; divide by a cell in that unit first';
  return { dimension: value.dimension ?? plain, scale: 'base' };
}

function roundRule(args: readonly Argument[]): Typing | string {
  const decimals = args[1];
  const allowed =
    decimals === undefined || (decimals.literal !== undefined && decimals.literal >= 0 && decimals.literal <= 15);
  return allowed ? wholeRule(args) : 'takes its decimals as a written whole number from 0 to 15';
}

/** Functions of plain arithmetic. */
export const mathFunctions = [
  record({
    name: 'abs',
    signature: 'abs(x)',
    summary: 'Size without the sign.',
    examples: [['abs(-3)', '3']],
    arity: [1, 1],
    typing: keep,
    compute: (m, args) => m.absolute(nth(args, 0)),
  }),
  record({
    name: 'min',
    signature: 'min(a, …)',
    summary: 'The smallest of values of one kind.',
    examples: [['min(3, 2, 5)', '2']],
    arity: [1, many],
    typing: keep,
    compute: (m, args) => args.reduce((a, b) => m.smaller(a, b)),
  }),
  record({
    name: 'max',
    signature: 'max(a, …)',
    summary: 'The largest of values of one kind.',
    examples: [['max(3, 2, 5)', '5']],
    arity: [1, many],
    typing: keep,
    compute: (m, args) => args.reduce((a, b) => m.larger(a, b)),
  }),
  record({
    name: 'sqrt',
    signature: 'sqrt(x)',
    summary: 'Square root; halves each power of the unit.',
    examples: [['sqrt(9)', '3']],
    arity: [1, 1],
    compute: (m, args) => m.squareRoot(nth(args, 0)),
    typing: ([x]) => {
      const half = x?.dimension === undefined ? plain : halved(x.dimension);
      return half === undefined ? 'takes a value whose unit has even powers only' : { dimension: half, scale: 'base' };
    },
    reason: () => outside('square root of a negative number'),
  }),
  record({
    name: 'exp',
    signature: 'exp(x)',
    summary: 'e to the power x.',
    examples: [['exp(0)', '1']],
    arity: [1, 1],
    typing: onlyPlain,
    compute: (m, args) => m.exponential(nth(args, 0)),
  }),
  record({
    name: 'log',
    signature: 'log(x)',
    summary: 'Natural logarithm.',
    examples: [['log(1)', '0']],
    arity: [1, 1],
    typing: onlyPlain,
    compute: (m, args) => m.logarithm(nth(args, 0)),
    reason: () => outside('logarithm of a number not above 0'),
  }),
  record({
    name: 'log10',
    signature: 'log10(x)',
    summary: 'Logarithm to base 10.',
    examples: [['log10(1000)', '3']],
    arity: [1, 1],
    typing: onlyPlain,
    compute: (m, args) => m.logarithm10(nth(args, 0)),
    reason: () => outside('logarithm of a number not above 0'),
  }),
  record({
    name: 'floor',
    signature: 'floor(x)',
    summary: 'The next whole number down.',
    examples: [
      ['floor(-2.5)', '-3'],
      ['floor(1/3*3)', '1'],
    ],
    arity: [1, 1],
    typing: wholeRule,
    compute: (m, args) => m.floor(nth(args, 0)),
  }),
  record({
    name: 'ceil',
    signature: 'ceil(x)',
    summary: 'The next whole number up.',
    examples: [['ceil(2.1)', '3']],
    arity: [1, 1],
    typing: wholeRule,
    compute: (m, args) => m.ceil(nth(args, 0)),
  }),
  record({
    name: 'round',
    signature: 'round(x, n)',
    summary: 'Rounded to n decimals (none: whole), half away from zero.',
    examples: [
      ['round(-2.5)', '-3'],
      ['round(2.345, 2)', '2.35'],
    ],
    arity: [1, 2],
    typing: roundRule,
    compute: (m, args) => m.round(nth(args, 0), args.length > 1 ? m.toNumber(nth(args, 1)) : 0),
  }),
];
