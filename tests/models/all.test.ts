import { describe, expect, test } from 'vitest';
import { exact } from '../../src/core/exact';
import { decimal, type Decimal } from '../../src/core/number';
import { readModel } from '../../src/files/readModel';
import { writeTable } from '../../src/files/writeTable';
import { evaluate } from '../../src/formula/evaluate';
import type { Plan } from '../../src/model/model';
import { runCells } from '../../src/model/sections';
import { loadInputs } from '../model/loadInputs';
import { evaluatePlan } from '../../src/model/values';
import { balancedFlow, readSchedule, wholeBoards } from '../../src/trade/schedule';
import { expectedOf, modelBytes, readme, Shipped, shippedNames, written, type Changes } from './shipped';

const closest = 1e-12;

/** By cell: its exact value, and the largest summand met on the way to it. */
function exactWithSummands(plan: Plan): { value: Decimal; largest: Decimal }[] {
  const cells = plan.contents.map(() => ({ value: decimal(NaN), largest: decimal(0) }));
  for (const id of plan.structure.order) {
    const content = plan.contents[id]!;
    let largest = decimal(0);
    const meet = (...summands: Decimal[]): void => {
      for (const size of summands.map((summand) => summand.abs())) if (size.gt(largest)) largest = size;
    };
    const add: typeof exact.add = (x, y) => (meet(x, y), exact.add(x, y));
    const subtract: typeof exact.subtract = (x, y) => (meet(x, y), exact.subtract(x, y));
    const cell = (read: number): Decimal => (meet(cells[read]!.largest), cells[read]!.value);
    const arithmetic = { ...exact, add, subtract };
    const value =
      content.kind === 'input'
        ? content.number
        : content.kind === 'void'
          ? decimal(NaN)
          : evaluate(content.node, { arithmetic, cell, fail: () => undefined });
    cells[id] = { value, largest };
  }
  return cells;
}

/** Cells whose exact and float values differ by more than 1e-12 of the larger of value and largest summand. */
function apart(shipped: Shipped, planName: string, changes: Changes = {}): string[] {
  const plan = shipped.planWith(planName, changes);
  const registers = loadInputs(plan.structure.sections(), plan.contents);
  runCells(plan.structure.sections(), registers, plan.structure.order);
  const cells = exactWithSummands(plan);
  return shipped.model.cells.flatMap(({ id, name }) => {
    const { value, largest } = cells[id]!;
    const size = value.abs().gt(largest) ? value.abs() : largest;
    const float = registers[id]!;
    const near = Number.isFinite(float) && decimal(float).minus(value).abs().lte(size.times(closest));
    return near ? [] : [`${name}: ${value.toString()} exact, ${float} float`];
  });
}

/** Today, and each range at either end. */
function states(shipped: Shipped): [string, Changes][] {
  const ends = shipped
    .ranges()
    .flatMap(([name, ...both]) => both.map((text): [string, Changes] => [`${name} ${text}`, { [name]: text }]));
  return [['today', {}], ...ends];
}

test('there are models', () => expect(shippedNames.length).toBeGreaterThan(1));

describe.each(shippedNames)('%s', (name) => {
  const shipped = new Shipped(name);
  const { model, rows, plans } = shipped;

  test('has no faults and nothing to be warned of', () => {
    expect([...model.faults, ...model.notices]).toEqual([]);
  });

  test('is written as it was read, byte for byte', () => {
    const bytes = modelBytes(name);
    const { file, model: read } = readModel(bytes);
    expect(Buffer.from(writeTable(file, read.sheet)).equals(bytes)).toBe(true);
  });

  test('begins with the question that it answers', () => {
    expect(model.title).toMatch(/^[A-Z][^?]+\? /);
  });

  test('says of every input what it is, where it comes from, and how far it may lie off', () => {
    const numbers = rows.filter((row) =>
      [...row].some(
        ([column, text]) => (column === 'formula' || column.startsWith('plan: ')) && /^-?\d+(\.\d+)?$/.test(text),
      ),
    );
    const wanting = numbers.filter((row) => {
      const [label, note, source, low, unit] = ['label', 'note', 'source', 'low', 'unit'].map((at) => row.get(at));
      const bounded = low !== '' || /^A decision|^Nothing|^No move/.test(note ?? '') || note?.includes('A decision');
      const measured = unit !== '' || /plain number/i.test(note ?? '');
      return !label || !note || !(source || /^\D/.test(row.get('formula') ?? '')) || !bounded || !measured;
    });
    expect(wanting.map((row) => row.get('name'))).toEqual([]);
  });

  test('computes every cell of every plan, and meets its checks today', () => {
    const errors = plans.map((plan) => [...evaluatePlan(shipped.planWith(plan)).errors.values()]);
    expect(errors.flat()).toEqual([]);
    expect(plans.map((plan) => shipped.failing(plan))).toEqual(plans.map(() => []));
  });

  test('computes every cell at either end of every range', () => {
    const faulty = plans.flatMap((plan) =>
      states(shipped)
        .filter(([, changes]) => evaluatePlan(shipped.planWith(plan, changes)).errors.size > 0)
        .map(([state]) => `${plan}, ${state}`),
    );
    expect(faulty).toEqual([]);
  });

  test('is the same in exact and in float arithmetic', () => {
    const differing = plans.flatMap((plan) =>
      states(shipped).flatMap(([state, changes]) =>
        apart(shipped, plan, changes).map((difference) => `${plan}, ${state}: ${difference}`),
      ),
    );
    expect(differing).toEqual([]);
  });

  test('gives the reviewed figures, headlines and checks among them', () => {
    const expected = expectedOf(name);
    const shown = model.cells.filter(({ role }) => role !== '').map((cell) => cell.name);
    expect(Object.keys(expected)).toEqual(plans);
    for (const [plan, figures] of Object.entries(expected)) {
      expect(Object.keys(figures)).toEqual(expect.arrayContaining(shown));
      expect(written(shipped.values(plan), figures)).toEqual(figures);
    }
  });

  test('has a schedule where its cells say what they are in it', () => {
    const tagged = model.cells.some(({ crop }) => crop !== '');
    const schedules = plans.map((plan) => readSchedule(model.cells, evaluatePlan(shipped.planWith(plan))));
    expect(schedules.map((schedule) => schedule !== undefined)).toEqual(plans.map(() => tagged));
    for (const schedule of schedules.filter((one) => one !== undefined)) {
      const whole = wholeBoards(schedule).finishedPerWeek;
      const balanced = balancedFlow(schedule).finishedPerWeek;
      expect(whole.gt(0) && whole.lte(balanced.times(1 + closest))).toBe(true);
    }
  });

  const section = readme.split(/^## /m).find((text) => text.startsWith(`${name}.csv\n`)) ?? '';

  test('has the figures that models/README.md gives for it', () => {
    const byLabel = new Map(model.cells.map((cell) => [cell.label, cell.name]));
    const lines = section.split('\n').map((line) =>
      line
        .split('|')
        .slice(1, -1)
        .map((text) => text.trim()),
    );
    const figures = lines.filter(([label = '', ...rest]) => byLabel.has(label) && rest.length === plans.length);
    const isTable = ([label = '', ...rest]: string[]): boolean => label === '' && rest.join() === plans.join();
    expect(lines.some(isTable)).toBe(true);
    expect(figures).not.toEqual([]);
    for (const [label = '', ...texts] of figures) {
      texts.forEach((text, i) => {
        const cell = { [byLabel.get(label)!]: text.replaceAll(',', '').replace(/ [A-Z]{3}$/, '') };
        expect([label, written(shipped.values(plans[i]!), cell)]).toEqual([label, cell]);
      });
    }
  });

  test('is explained in models/README.md, with its plans', () => {
    expect(plans.filter((plan) => !section.includes(`*${plan}*`))).toEqual([]);
    expect(section).toContain('Checked by');
  });
});
