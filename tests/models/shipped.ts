import Fraction from 'fraction.js';
import { readFileSync, readdirSync } from 'node:fs';
import { readModelText } from '../../src/files/readModel';
import { edit, editIn } from '../../src/model/edit';
import { cellNamed, type Model, type Plan } from '../../src/model/model';
import { evaluatePlan } from '../../src/model/values';
import { rowsOf } from '../reference/transplantHire.oracle';

/** A number that must be right, or whether a check holds. */
export type Value = Fraction | boolean;
export type Results = Readonly<Record<string, Value>>;
/** Numbers by the name of the input, as typed. */
export type Changes = Readonly<Record<string, string>>;
export type Summands = Readonly<Record<string, number>>;
/** A plan's input by name, in its own unit. */
export type Given = (name: string) => Fraction;
/** A second calculation of a model: every calculated cell of a plan, worked out without the file's formulas. */
export type Oracle = (given: Given, plan: string) => Results;

const folder = new URL('../../models/', import.meta.url);
const closest = new Fraction(1n, 10n ** 30n);

/** The models by the name of their file without its ending. */
export const shippedNames = readdirSync(folder)
  .filter((file) => file.endsWith('.csv'))
  .map((file) => file.replace(/\.csv$/, ''));

export function modelBytes(name: string): Uint8Array {
  return readFileSync(new URL(`${name}.csv`, folder));
}

export const readme = readFileSync(new URL('README.md', folder), 'utf8');

/** A model with the fields of its rows as they stand in the file. */
export class Shipped {
  readonly model: Model;
  /** The rows that hold cells. */
  readonly rows: readonly ReadonlyMap<string, string>[];
  readonly plans: readonly string[];

  constructor(readonly name: string) {
    const csv = new TextDecoder().decode(modelBytes(name));
    this.model = readModelText(csv).model;
    this.rows = rowsOf(csv).filter((row) => row.get('name'));
    this.plans = this.model.plans.map((plan) => plan.name);
  }

  /** Names of the cells with a range, with its two ends. */
  ranges(): [name: string, low: string, high: string][] {
    const ranged = this.rows.filter((row) => row.get('low'));
    return ranged.map((row) => [row.get('name') ?? '', row.get('low') ?? '', row.get('high') ?? '']);
  }

  /** The plan after some inputs changed where it takes them from. */
  planWith(name: string, changes: Changes = {}): Plan {
    const planOf = (model: Model): Plan => model.plans.find((plan) => plan.name === name)!;
    const changed = Object.entries(changes).reduce(
      (model, [cell, text]) => edit(model, editIn(model, planOf(model), cellNamed(model, cell)!.id, text)).model,
      this.model,
    );
    return planOf(changed);
  }

  /** Every cell of a plan as the engine has it; a cell without a value is left out. */
  values(plan: string, changes: Changes = {}): ReadonlyMap<string, Value> {
    const at = this.planWith(plan, changes);
    const { numbers, errors } = evaluatePlan(at);
    const known = this.model.cells.filter(({ id }) => !errors.has(id));
    return new Map(
      known.map(({ id, name }) => {
        const content = at.contents[id]!;
        const isTruth = content.kind === 'calculated' && content.gives === 'truth';
        return [name, isTruth ? numbers[id]!.eq(1) : new Fraction(numbers[id]!.toFixed())];
      }),
    );
  }

  /** A plan's own numbers, read from the file and not by the engine. */
  inputs(plan: string, changes: Changes = {}): ReadonlyMap<string, Fraction> {
    const texts = this.rows.map((row) => [
      row.get('name') ?? '',
      row.get(`plan: ${plan}`) || (row.get('formula') ?? ''),
    ]);
    const numbers = [...texts, ...Object.entries(changes)].filter(([, text]) => /^-?\d+(\.\d+)?$/.test(text ?? ''));
    return new Map(numbers.map(([name = '', text = '']) => [name, new Fraction(text)]));
  }

  /** What a second calculation makes of a plan, its inputs included. */
  secondValues(oracle: Oracle, plan: string, changes: Changes = {}): Results {
    const inputs = this.inputs(plan, changes);
    const given: Given = (name) => {
      const value = inputs.get(name);
      if (value === undefined) throw new Error(`the model file has no number for ${name}`);
      return value;
    };
    return { ...Object.fromEntries(inputs), ...oracle(given, plan) };
  }

  /**
   * The cells on which the engine and a second calculation differ, with both values.
   * @param summands for cells that are a small difference of large numbers: how large these are
   */
  differences(oracle: Oracle, plan: string, changes: Changes = {}, summands: Summands = {}): string[] {
    const got = this.values(plan, changes);
    return Object.entries(this.secondValues(oracle, plan, changes))
      .filter(([name, want]) => !agree(got.get(name), want, summands[name]))
      .map(([name, want]) => `${name}: ${String(got.get(name))}, not ${want.toString()}`);
  }

  /** Names of the checks that a plan does not meet. */
  failing(plan: string, changes: Changes = {}): string[] {
    const values = this.values(plan, changes);
    return this.model.cells
      .filter(({ role, name }) => role === 'check' && values.get(name) !== true)
      .map(({ name }) => name);
  }
}

/**
 * Whether two numbers differ by at most 1e-30 of the one that is right or of the numbers whose difference it is, or two
 * truths are the same.
 */
export function agree(got: Value | undefined, want: Value, summand = 0): boolean {
  if (typeof want === 'boolean' || typeof got !== 'object') return got === want;
  const size = want.abs().gt(summand) ? want.abs() : new Fraction(summand);
  return got.sub(want).abs().lte(size.mul(closest));
}

/** A number as text with some decimals, rounded half away from zero. */
export function rounded(value: Fraction, decimals: number): string {
  const steps = value
    .abs()
    .mul(10n ** BigInt(decimals))
    .add('0.5')
    .floor();
  const digits = steps.toFraction().padStart(decimals + 1, '0');
  const text = decimals === 0 ? digits : `${digits.slice(0, -decimals)}.${digits.slice(-decimals)}`;
  return value.compare(0) < 0 && !steps.equals(0) ? `-${text}` : text;
}

/** Reviewed figures of a model's plans: decimals as far as written, true or false for checks. */
export type Expected = Readonly<Record<string, Readonly<Record<string, string | boolean>>>>;

export function expectedOf(name: string): Expected {
  const text = readFileSync(new URL(`${name}.expected.json`, import.meta.url), 'utf8');
  return JSON.parse(text) as Expected;
}

/** The values of the cells that an expected plan names, written as far as the expected ones are. */
export function written(values: ReadonlyMap<string, Value>, expected: Expected[string]): Expected[string] {
  const asFar = (value: Value | undefined, text: string | boolean): string | boolean => {
    if (typeof value !== 'object') return value ?? 'no value';
    return rounded(value, typeof text === 'string' ? (text.split('.')[1] ?? '').length : 0);
  };
  return Object.fromEntries(Object.entries(expected).map(([name, text]) => [name, asFar(values.get(name), text)]));
}
