import { wording } from '../language/wording';
import { describe, plain, raised, same, times } from '../core/dimension';
import { problem, type Problem } from '../core/problem';
import { divide, equal, isOne, multiply, one, ratioPower } from '../core/ratio';
import type { Unit } from '../core/unit';
import { arityFault } from './arity';
import type { Checked, Comparison } from './checked';
import { leftSide, show, type Binary, type BinarySign, type Expression } from './expression';
import type { Argument } from './function';
import { functions } from './functions';
import { inScale, meetingScale, number, truth, type Measured } from './measured';
import { mismatch } from './mismatch';
import { Spelling } from './spelling';
import { unknownFunction } from './unknownFunction';
import { unknownName } from './unknownName';

/** What a name stands for; `unit` is undefined for a cell with a fault that leaves its kind unknown. */
export interface NamedCell {
  readonly cell: number;
  readonly kind: 'number' | 'truth';
  readonly unit: Unit | undefined;
}

/** Everything that a formula may name. */
export interface Scope {
  find(name: string): NamedCell | undefined;
  names(): Iterable<string>;
}

/** A fault found on the way through an expression; it leaves this file as a returned fault. */
class Refusal extends Error {
  constructor(readonly fault: Problem) {
    super(fault.message);
  }
}

function refuse(code: string, what: string, expression: Expression, fix: string): never {
  const text = show(expression, 80);
  throw new Refusal(problem(code, `${what}: ${text}. ${fix}`, { text }));
}

/** Largest literal power whose scale is carried along; a larger one takes its base in base units. */
const carriedPower = 64;
/** Largest part of a scale that is carried along through products: exact fractions get slow as they grow. */
const largestCarried = 10n ** 600n;

const comparisons: ReadonlyMap<BinarySign, Comparison> = new Map([
  ['<', 'less'],
  ['<=', 'atMost'],
  ['>', 'greater'],
  ['>=', 'atLeast'],
  ['==', 'equal'],
  ['!=', 'unequal'],
]);

class Checker {
  constructor(
    private readonly scope: Scope,
    private readonly spelling: Spelling,
  ) {}

  check(expression: Expression): Measured {
    switch (expression.kind) {
      case 'number':
        return number({ op: 'number', text: expression.text }, Number(expression.text) === 0 ? undefined : plain);
      case 'name':
        return this.name(expression);
      case 'unary':
        return this.unary(expression);
      case 'binary':
        return this.binary(expression);
      case 'choose':
        return this.choose(expression);
      case 'call':
        return this.call(expression);
    }
  }

  private name(expression: Expression & { kind: 'name' }): Measured {
    const found = this.scope.find(expression.name);
    if (found === undefined) throw new Refusal(unknownName(expression.name, this.scope.names()));
    const node: Checked = { op: 'cell', cell: found.cell };
    if (found.kind === 'truth') return truth(node);
    if (found.unit === undefined) {
      const text = expression.name;
      throw new Refusal(problem('upstream', wording`cell with a fault: ${text}. Mend that cell first.`, { text }));
    }
    this.spelling.note(found.unit);
    return number(node, found.unit.dimension, found.unit.scale, !isOne(found.unit.scale));
  }

  private number(expression: Expression): Measured {
    return asNumber(this.check(expression), expression);
  }

  private truth(expression: Expression): Checked {
    return asTruth(this.check(expression), expression);
  }

  private unary(expression: Expression & { kind: 'unary' }): Measured {
    if (expression.sign === 'not') return truth({ op: 'not', of: this.truth(expression.of) });
    const of = this.number(expression.of);
    return { ...of, node: { op: 'negate', of: of.node } };
  }

  private binary(expression: Binary): Measured {
    const { start, operations } = leftSide(expression);
    return operations.reduce((left, operation) => this.join(operation, left), this.check(start));
  }

  /** An operation whose left value has been checked. */
  private join(operation: Binary, left: Measured): Measured {
    const { sign } = operation;
    if (sign === 'and' || sign === 'or') {
      return truth({ op: sign, left: asTruth(left, operation.left), right: this.truth(operation.right) });
    }
    const a = asNumber(left, operation.left);
    const b = this.number(operation.right);
    if (sign === '^') return this.power(operation, a, b);
    if (sign === '*' || sign === '/') return product(sign, a, b);
    const met = this.meet([a, b], operation);
    const [leftNode, rightNode] = met.nodes as [Checked, Checked];
    const comparison = comparisons.get(sign);
    if (comparison !== undefined) return truth({ op: comparison, left: leftNode, right: rightNode });
    const op = sign === '+' ? 'add' : 'subtract';
    return number({ op, left: leftNode, right: rightNode }, met.dimension, met.scale, met.factored);
  }

  /** Values that must be of one kind, brought to one scale. */
  private meet(measured: readonly Measured[], at: Expression): Omit<Measured, 'node' | 'kind'> & { nodes: Checked[] } {
    const dimension = measured.find((part) => part.dimension !== undefined)?.dimension;
    for (const part of measured) {
      if (dimension === undefined || part.dimension === undefined || same(part.dimension, dimension)) continue;
      const naming = this.spelling.naming();
      const [first, other] = [describe(dimension, naming), describe(part.dimension, naming)];
      const what = wording`${first} and ${other} do not go together`;
      refuse('unit-mixed', what, at, mismatch(part.dimension, dimension, naming));
    }
    const scale = meetingScale(measured);
    const factored = measured.some((part) => part.factored);
    return { nodes: measured.map((part) => inScale(part, scale)), dimension, scale, factored };
  }

  private power(expression: Binary, base: Measured, exponent: Measured): Measured {
    if ((exponent.dimension ?? plain).size > 0) {
      refuse('unit-exponent', wording`exponent with a unit`, expression.right, wording`An exponent is a plain number.`);
    }
    const whole = wholeLiteral(expression.right);
    if (whole !== undefined && Math.abs(whole) <= carriedPower) {
      const node: Checked = { op: 'power', left: base.node, right: { op: 'number', text: String(whole) } };
      return number(node, raised(base.dimension ?? plain, whole), ratioPower(base.scale, whole));
    }
    const dimension = base.dimension ?? plain;
    if (dimension.size > 0 && whole === undefined) {
      refuse(
        'unit-exponent',
        wording`a value with a unit to a power that is not a written whole number`,
        expression,
        wording`Write the power as a whole number, or take the unit off by dividing.`,
      );
    }
    const node: Checked = { op: 'power', left: inScale(base, one), right: inScale(exponent, one) };
    return number(node, raised(dimension, whole ?? 1));
  }

  private choose(expression: Expression & { kind: 'choose' }): Measured {
    const test = this.truth(expression.test);
    const [yes, no] = [this.check(expression.yes), this.check(expression.no)];
    if (yes.kind !== no.kind) {
      refuse(
        'kind',
        wording`a choice between a number and true or false`,
        expression,
        wording`Both arms must be of one kind.`,
      );
    }
    if (yes.kind === 'truth') return truth({ op: 'choose', test, yes: yes.node, no: no.node });
    const met = this.meet([yes, no], expression);
    const [yesNode, noNode] = met.nodes as [Checked, Checked];
    return number({ op: 'choose', test, yes: yesNode, no: noNode }, met.dimension, met.scale, met.factored);
  }

  private call(expression: Expression & { kind: 'call' }): Measured {
    const fn = functions.get(expression.name);
    if (fn === undefined)
      throw new Refusal(unknownFunction(expression.name, this.scope.find(expression.name) !== undefined));
    const miscounted = arityFault(fn, expression.args.length);
    if (miscounted !== undefined) refuse('arity', miscounted, expression, wording`Its form is ${fn.signature}.`);
    const args = expression.args.map((arg) => this.number(arg));
    const typing = fn.typing(
      args.map((arg, i) => argument(arg, expression.args[i])),
      fn.name,
    );
    if (typeof typing === 'string') {
      const naming = this.spelling.naming();
      const units = args.map((arg) => describe(arg.dimension ?? plain, naming)).join(', ');
      return refuse(
        'function-unit',
        wording`${typing}; here: ${units}`,
        expression,
        wording`Its form is ${fn.signature}.`,
      );
    }
    if (typing.scale === 'base') {
      return number({ op: 'call', fn, args: args.map((arg) => inScale(arg, one)) }, typing.dimension);
    }
    const met = this.meet(args, expression);
    return number({ op: 'call', fn, args: met.nodes }, typing.dimension, met.scale, met.factored);
  }
}

function asNumber(measured: Measured, at: Expression): Measured {
  if (measured.kind === 'number') return measured;
  return refuse(
    'kind',
    wording`true or false where a number must be`,
    at,
    wording`Choose numbers by it: condition ? 1 : 0.`,
  );
}

function asTruth(measured: Measured, at: Expression): Checked {
  if (measured.kind === 'truth') return measured.node;
  return refuse(
    'kind',
    wording`number where a condition must be`,
    at,
    wording`Compare it with something, as in a > 0.`,
  );
}

/** A product or quotient: scales multiply, so nothing is converted yet. */
function product(sign: '*' | '/', a: Measured, b: Measured): Measured {
  const dimension = times(a.dimension ?? plain, b.dimension ?? plain, sign === '*' ? 1 : -1);
  const op = sign === '*' ? 'multiply' : 'divide';
  const scale = sign === '*' ? multiply(a.scale, b.scale) : divide(a.scale, b.scale);
  if (scale.over > largestCarried || scale.under > largestCarried) {
    return number({ op, left: inScale(a, one), right: inScale(b, one) }, dimension);
  }
  return number({ op, left: a.node, right: b.node }, dimension, scale);
}

/** The whole number that an expression is, written as a literal with or without a minus. */
function wholeLiteral(expression: Expression | undefined): number | undefined {
  if (expression?.kind === 'unary' && expression.sign === '-') {
    const size = wholeLiteral(expression.of);
    return size === undefined ? undefined : -size;
  }
  if (expression?.kind !== 'number') return undefined;
  const value = Number(expression.text);
  return Number.isSafeInteger(value) ? value : undefined;
}

function argument(measured: Measured, expression: Expression | undefined): Argument {
  return { dimension: measured.dimension, factored: measured.factored, literal: wholeLiteral(expression) };
}

/** A formula that passed, with its kind; `node` gives a number in the wanted unit, or true or false. */
export interface CheckedFormula {
  readonly kind: 'number' | 'truth';
  readonly node: Checked;
}

/**
 * Checks a formula against the cells it names before anything is computed: names, argument counts, kinds, units.
 * @param unit the unit of the cell that the formula fills
 * @returns the checked formula, or its first fault
 */
export function checkFormula(expression: Expression, unit: Unit, scope: Scope): CheckedFormula | Problem {
  const spelling = new Spelling();
  spelling.note(unit);
  try {
    const measured = new Checker(scope, spelling).check(expression);
    if (measured.kind === 'truth') return truthIn(unit, measured.node);
    const { dimension } = measured;
    if (dimension !== undefined && !same(dimension, unit.dimension)) {
      const naming = spelling.naming();
      const fix = mismatch(dimension, unit.dimension, naming);
      const text = describe(dimension, naming);
      return problem(
        'unit-mismatch',
        wording`unit does not fit: the formula gives ${text}, the cell holds ${unit.text || wording`a plain number`}. ${fix}`,
        { text },
      );
    }
    return { kind: 'number', node: inScale(measured, unit.scale) };
  } catch (error) {
    if (error instanceof Refusal) return error.fault;
    throw error;
  }
}

function truthIn(unit: Unit, node: Checked): CheckedFormula | Problem {
  if (unit.dimension.size === 0 && equal(unit.scale, one)) return { kind: 'truth', node };
  return problem('kind', wording`true or false has no unit: ${unit.text}. Leave the unit blank.`, { text: unit.text });
}
