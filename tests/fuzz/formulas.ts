import type { Arithmetic } from '../../src/core/arithmetic';
import { exact } from '../../src/core/exact';
import { float } from '../../src/core/float';
import { checkFormula, type CheckedFormula } from '../../src/formula/check';
import { compileProgram, ProgramWriter } from '../../src/formula/compile';
import { evaluate } from '../../src/formula/evaluate';
import { functions } from '../../src/formula/functions';
import { run } from '../../src/formula/program';
import { understand } from '../../src/model/formulaReader';
import { scopeOf, truth, unitOf, type Given } from '../formula/given';
import type { Chance } from '../kill/chance';
import { bothArithmetics } from './bothArithmetics';
import { damaged, oneOf, slipIn, type FuzzKind } from './kind';

const names = [
  ['a', ''],
  ['b', ''],
  ['share', '%'],
  ['stage', 'week'],
  ['turn', 'day'],
  ['plants', 'plant'],
  ['wage', 'EUR/h'],
  ['time', 's/plant'],
  ['open', truth],
] as const;
const plainNumbers = ['0', '1', '2', '-1', '0.5', '3.25', '7', '100', '12.5', '-0.125', '?'];
const hugeNumbers = ['1e300', '-1e300', '1e-300', '1e15', '0.0000001', '99999999999999999999', '1e17', '-1e-9'];
const units = ['', '%', 'day', 'week', 'plant', 'EUR/plant', 'EUR', 'plant/day'];
const calls = [...functions.values()];
const signs = ['+', '-', '*', '/', '^', '<', '<=', '>', '>=', '==', '!=', 'and', 'or', '?', ',', '%', '=', ';', 'mod'];

function grown(chance: Chance, depth: number): string {
  const below = (): string => grown(chance, depth - 1);
  const leaf = depth <= 0 || chance.whole(0, 4) === 0;
  if (leaf) return chance.whole(0, 3) === 0 ? oneOf(chance, ['0', '1', '2', '0.5', '1e3']) : oneOf(chance, names)[0];
  switch (chance.whole(0, 8)) {
    case 0: {
      const { name, arity } = oneOf(chance, calls);
      const count = chance.whole(arity[0], Math.min(arity[1], arity[0] + 3) + 1);
      return `${name}(${Array.from({ length: count }, below).join(', ')})`;
    }
    case 1:
      return `(${below()} ${oneOf(chance, ['<', '>', '<=', '>=', '==', '!='])} ${below()} ? ${below()} : ${below()})`;
    case 2:
      return `-${below()}`;
    case 3:
      return `(${below()}) ^ ${oneOf(chance, ['2', '-1', '0.5', '-3', '40', 'a'])}`;
    default:
      return `(${below()} ${oneOf(chance, ['+', '-', '*', '/'])} ${below()})`;
  }
}

function soup(chance: Chance): string {
  const token = (): string =>
    oneOf(chance, [oneOf(chance, names)[0], oneOf(chance, signs), '(', ')', oneOf(chance, calls).name, '1', '.5', ' ']);
  return Array.from({ length: chance.whole(1, 25) }, token).join(chance.whole(0, 2) === 0 ? ' ' : '');
}

function formulaBy(chance: Chance): string {
  const way = chance.whole(0, 10);
  if (way === 0) return soup(chance);
  if (way === 1) return damaged(chance, grown(chance, 3));
  return grown(chance, chance.whole(1, 5));
}

function compiledValue({ node }: CheckedFormula, values: readonly number[]): number {
  const writer = new ProgramWriter(values.length + 1);
  const end = writer.formula(node, values.length);
  const program = compileProgram(writer);
  const registers = program.registers();
  values.forEach((value, id) => (registers[id] = value));
  run(program, registers, 0, end);
  return registers[values.length]!;
}

/** A formula that passed its checks, in every arithmetic. */
function inEveryArithmetic(formula: CheckedFormula, given: Given): string {
  const texts = given.map(([, text]) => (text === '?' ? 'NaN' : text));
  const reasons: string[] = [];
  const fail = ({ message }: { readonly message: string }): unknown => reasons.push(message);
  const value = <T>(arithmetic: Arithmetic<T>): T =>
    evaluate(formula.node, { arithmetic, cell: (id) => arithmetic.read(texts[id]!), fail });
  const inExact = value(exact);
  const isMissing = given.some(([, text]) => text === '?');
  if (inExact.isNaN() && !isMissing && reasons.length === 0) return 'no value and no reason';
  if (!inExact.isNaN() && !inExact.isFinite()) return `exact value ${inExact.toString()}`;
  const inFloat = value(float);
  if (Math.abs(inFloat) === Infinity) return 'infinite in float64';
  const compiled = compiledValue(formula, texts.map(Number));
  if (!Object.is(compiled + 0, inFloat + 0)) return `compiled ${compiled}, evaluated ${inFloat}`;
  const differences: string[] = [];
  const arithmetic = bothArithmetics((difference) => differences.push(difference));
  evaluate(formula.node, { arithmetic, cell: (id) => arithmetic.read(texts[id]!), fail });
  const slip = reasons.map((reason) => slipIn(reason, '')).find((found) => found !== '');
  return slip ?? differences[0] ?? '';
}

function formulaCase(chance: Chance): string {
  const text = formulaBy(chance);
  const huge = chance.whole(0, 4) === 0;
  const given: Given = names.map(([name, unit]) => {
    if (unit === truth) return [name, oneOf(chance, ['0', '1', '?']), unit];
    return [name, oneOf(chance, huge ? hugeNumbers : plainNumbers), unit];
  });
  const understood = understand(text);
  if (understood.kind === 'input') return '';
  if (understood.kind === 'fault') return slipIn(understood.fault.message, text);
  for (const unit of [oneOf(chance, units), '']) {
    const checked = checkFormula(understood.expression, unitOf(unit), scopeOf(given));
    if ('code' in checked) {
      const slip = slipIn(checked.message, text);
      if (slip !== '') return `${text} ${slip}`;
      continue;
    }
    const wrong = inEveryArithmetic(checked, given);
    if (wrong !== '') return `${text} with ${given.map(([name, at]) => `${name} ${at}`).join(', ')}: ${wrong}`;
    break;
  }
  return '';
}

export const formulas: FuzzKind = { name: 'formulas', share: 60, run: formulaCase };
