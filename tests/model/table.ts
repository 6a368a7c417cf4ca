import type { Problem } from '../../src/core/problem';
import { decimal, numberToText } from '../../src/core/number';
import { buildModel } from '../../src/model/buildModel';
import { cellNamed, type Model, type Plan } from '../../src/model/model';
import { question, type Question } from '../../src/model/response';
import { planOfColumn, type Sheet, type SheetRow } from '../../src/model/sheet';
import { evaluatePlan, type Values } from '../../src/model/values';
import type { View } from '../../src/model/view';

/*
 * A model written down, one row a line, the first one being record 2:
 *
 *     name [unit]: formula | range: low high shape | in Plan: formula | column: text
 *     - text | note: answer
 *
 * Plans stand in the order in which they are first met.
 */

const columns =
  'name label unit formula low high shape step group role budget crop correlation choices note source'.split(' ');
const beginning = /^(?<name>[^\s[:]+)\s*(?:\[(?<unit>.*?)\])?:(?<formula>.*)$/;

function part(text: string): (readonly [column: string, text: string])[] {
  const at = text.indexOf(':');
  const [key, value] = [text.slice(0, at).trim(), text.slice(at + 1).trim()];
  if (key === 'range') return value.split(/\s+/).map((word, i) => [['low', 'high', 'shape'][i] ?? '', word] as const);
  return [[key.startsWith('in ') ? `plan: ${key.slice(3)}` : key, value]];
}

function fields(line: string): Map<string, string> {
  const [first = '', ...parts] = line.split(' | ');
  const { name = '', unit = '', formula = '' } = beginning.exec(first)?.groups ?? {};
  const start = first.startsWith('- ') ? { label: first.slice(2) } : { name, unit, formula: formula.trim() };
  return new Map([...Object.entries(start), ...parts.flatMap(part)]);
}

/** A written model as a sheet. */
export function sheetOf(text: string): Sheet {
  const lines = text.split('\n').flatMap((line) => line.trim() || []);
  const rows = lines.map((line, i): SheetRow => ({ row: i + 2, fields: fields(line) }));
  const plans = new Set(rows.flatMap((row) => [...row.fields.keys()].filter((column) => planOfColumn(column))));
  return { columns: [...columns, ...plans], rows };
}

/** A written model, checked. */
export function modelOf(text: string): Model {
  return buildModel(sheetOf(text));
}

/** A plan by name; the first one where none is named. */
export function planOf(model: Model, name?: string): Plan {
  const plan = name === undefined ? model.plans[0] : model.plans.find((each) => each.name === name);
  if (plan === undefined) throw new Error(`the model has no plan ${name ?? ''}`);
  return plan;
}

/** A cell's id by name. */
export function idOf(model: Model, name: string): number {
  const cell = cellNamed(model, name);
  if (cell === undefined) throw new Error(`the model has no cell ${name}`);
  return cell.id;
}

/** Faults or notices as `code row column cell text`, as tables show them. */
export function told(problems: readonly Problem[]): string[] {
  return problems.map(({ code, where: { row, column, cell, text } }) => [code, row, column, cell, text].join(' | '));
}

/** The codes of a written model's faults, in the order told. */
export function codes(text: string): string[] {
  return modelOf(text).faults.map(({ code }) => code);
}

/** What each cell of a plan comes to: its number as text, or `code at cause`. */
export function shown(model: Model, values: Values): Record<string, string> {
  return Object.fromEntries(
    model.cells.map(({ id, name }) => {
      const error = values.errors.get(id);
      const number = numberToText(values.numbers[id] ?? decimal(NaN));
      return [name, error === undefined ? number : `${error.code} at ${model.cells[error.cause]?.name ?? 'nowhere'}`];
    }),
  );
}

/** The same for a written model, in one plan. */
export function results(text: string, plan?: string): Record<string, string> {
  const model = modelOf(text);
  return shown(model, evaluatePlan(planOf(model, plan)));
}

/** A result of a written model, ready for studies. */
export function asked(model: Model, result: string, plan?: string, against?: string): Question {
  const view: View = {
    model,
    result: idOf(model, result),
    plan: planOf(model, plan),
    against: against === undefined ? undefined : planOf(model, against),
  };
  return question(view, evaluatePlan(view.plan), view.against && evaluatePlan(view.against));
}
