import fc from 'fast-check';
import { truth, type Given } from './given';
import { callsGiving, type NumberKind } from './randomCalls';

/**
 * Cells for random formulas, each with its unit; their numbers are drawn. Values stay small enough that nothing
 * overflows: what is not known comes from cells, divisions by 0 and arguments outside a function's domain.
 */
const names: readonly (readonly [name: string, unit: string])[] = [
  ['a', ''],
  ['b', ''],
  ['share', '%'],
  ['stage', 'week'],
  ['turn', 'day'],
  ['plants', 'plant'],
  ['thousands', 'thousand*plant'],
  ['open', truth],
  ['full', truth],
];

const numberText = fc.oneof(
  { weight: 8, arbitrary: fc.constantFrom('0', '1', '2', '3', '-1', '0.5', '0.1', '7', '12.5', '-2.75', '100') },
  { weight: 4, arbitrary: fc.integer({ min: -999, max: 999 }).map((n) => String(n / 8)) },
  { weight: 1, arbitrary: fc.constant('?') },
);
const truthText = fc.constantFrom('0', '1', '0', '1', '?');

export const randomCells: fc.Arbitrary<Given> = fc
  .tuple(...names.map(([, unit]) => (unit === truth ? truthText : numberText)))
  .map((numbers) => names.map(([name, unit], i) => [name, numbers[i]!, unit] as const));

type Kinds = Record<NumberKind | 'truth', string>;

/** Formulas of each kind that pass every check; `time` is in day or week, `count` in plants. */
const formulas = fc.letrec<Kinds>((tie) => {
  const [plain, time, count, condition] = [tie('plain'), tie('time'), tie('count'), tie('truth')];
  const written = fc.constantFrom('0', '1', '2', '0.25', '3.5', '10', '1e-3');
  const two = (a: fc.Arbitrary<string>, sign: string, b: fc.Arbitrary<string>): fc.Arbitrary<string> =>
    fc.tuple(a, b).map(([left, right]) => `(${left} ${sign} ${right})`);
  const call = (name: string, ...args: fc.Arbitrary<string>[]): fc.Arbitrary<string> =>
    fc.tuple(...args).map((texts) => `${name}(${texts.join(', ')})`);
  const choice = (arm: fc.Arbitrary<string>): fc.Arbitrary<string> =>
    fc.tuple(condition, arm, arm).map(([test, yes, no]) => `(${test} ? ${yes} : ${no})`);
  const shared = (kind: fc.Arbitrary<string>): fc.Arbitrary<string>[] => [
    two(kind, '+', kind),
    two(kind, '-', kind),
    two(kind, '*', plain),
    two(kind, '/', plain),
    choice(kind),
    kind.map((text) => `-${text}`),
  ];
  const compare = (kind: fc.Arbitrary<string>): fc.Arbitrary<string> =>
    fc.tuple(kind, fc.constantFrom('<', '<=', '>', '>=', '==', '!='), kind).map((parts) => `(${parts.join(' ')})`);
  const small = fc.constantFrom('a', 'b', 'share', '0', '1', '0.25', '-0.5', '(a / b)');
  const times = (kind: fc.Arbitrary<string>): fc.Arbitrary<string> => two(kind, '*', fc.constant('1'));
  const zero = fc.constantFrom('0', '-0');
  const whole = fc.constantFrom('1', '2', '5');
  const any = { plain, unfactored: times(plain), written: whole, zero, time, count, unfactoredCount: times(count) };
  const few = fc.constantFrom('plants', 'thousands', '(plants / 4)');
  const tame = {
    ...any,
    plain: small,
    unfactored: times(small),
    time: fc.constantFrom('stage', 'turn', '(stage - turn)', '(turn / 2)'),
    count: few,
    unfactoredCount: times(few),
  };
  const atMost = { maxDepth: 4, depthIdentifier: 'formula' };
  return {
    plain: fc.oneof(
      atMost,
      fc.oneof(fc.constantFrom('a', 'b', 'share'), written),
      two(time, '/', time),
      two(count, '/', count),
      fc.tuple(small, fc.constantFrom('-2', '-1', '0', '1', '2', '3', '0.5', 'b')).map(([x, n]) => `${x} ^ ${n}`),
      ...callsGiving('plain', any, tame),
      // These grow no number, so that they take more than calls in general do.
      call('sqrt', plain),
      call('log', plain),
      call('log10', plain),
      call('floor', times(plain)),
      call('ceil', times(plain)),
      call('round', times(plain), fc.constantFrom('0', '1', '2')),
      ...shared(plain),
    ),
    time: fc.oneof(atMost, fc.constantFrom('stage', 'turn'), ...callsGiving('time', any, tame), ...shared(time)),
    count: fc.oneof(
      atMost,
      fc.constantFrom('plants', 'thousands'),
      ...callsGiving('count', any, tame),
      call('whole_batch', count, time, time, fc.constantFrom('1', '6', 'a'), small),
      ...shared(count),
    ),
    truth: fc.oneof(
      atMost,
      fc.constantFrom('open', 'full'),
      compare(plain),
      compare(time),
      compare(count),
      two(condition, 'and', condition),
      two(condition, 'or', condition),
      condition.map((text) => `not ${text}`),
      choice(condition),
    ),
  };
});

/** A formula with the unit of the cell it fills. */
export const randomFormula: fc.Arbitrary<readonly [formula: string, unit: string]> = fc.oneof(
  fc.tuple(formulas.plain, fc.constantFrom('', '%')),
  fc.tuple(formulas.time, fc.constantFrom('day', 'week')),
  fc.tuple(formulas.count, fc.constantFrom('plant', 'thousand*plant')),
  fc.tuple(formulas.truth, fc.constant('')),
);
