import { readFileSync } from 'node:fs';
import { describe, expect, it } from 'vitest';
import { readModelText } from '../../../src/files/readModel';
import { buildModel } from '../../../src/model/buildModel';
import { freeName, renamed } from '../../../src/model/change/rename';
import { field, type Sheet } from '../../../src/model/sheet';
import { evaluatePlan } from '../../../src/model/values';
import { sheetOf } from '../table';

function formulas(sheet: Sheet): string[] {
  return sheet.rows.map((row) => field(row, 'formula'));
}

describe('renaming an entry', () => {
  const sheet = sheetOf(`
e: 2 | in A: 3
wage: 10 | correlation: e 0.5
pay: wage * 1e3 + e * wage2 + max(e, 1.5e3) | in A: e
wage2: 4`);

  it('changes the name wherever it stands, and no part of another name or number', () => {
    const after = renamed(sheet, 2, 'effort') as Sheet;
    expect(formulas(after)).toEqual(['2', '10', 'wage * 1e3 + effort * wage2 + max(effort, 1.5e3)', '4']);
    expect(field(after.rows[1]!, 'correlation')).toBe('effort 0.5');
    expect(field(after.rows[2]!, 'plan: A')).toBe('effort');
    expect(after.rows[3]).toBe(sheet.rows[3]);
  });

  it('changes it in figures of texts, and not in their words', () => {
    const told = sheetOf(`
- A wage of {wage; unit} | note: The wage: {wage * wage2; A; unit}, wage {b; wage}
wage: 10 | note: A wage of {wage}`);
    const after = renamed(told, 3, 'pay') as Sheet;
    expect(field(after.rows[0]!, 'label')).toBe('A wage of {pay; unit}');
    expect(field(after.rows[0]!, 'note')).toBe('The wage: {pay * wage2; A; unit}, wage {b; wage}');
    expect(field(after.rows[1]!, 'note')).toBe('A wage of {wage}');
  });

  it.each([
    ['wage2', 'name used twice: wage2. “wage2” has it already; choose another.'],
    ['Wage', /^name not allowed: Wage/],
    ['round', /^name has a meaning in formulas: round/],
    ['mod', /^name has a meaning in formulas: mod/],
    ['', /^name not allowed/],
  ])('refuses %s', (name, message) => {
    expect(renamed(sheet, 2, name)).toMatchObject({ message: expect.stringMatching(message) as unknown });
  });

  it.each(['transplant-hire', 'plug-media', 'three-stage', 'channel-or-bench', 'density-lesson'])(
    'keeps every value of %s, whichever entry is renamed',
    (name) => {
      const { model } = readModelText(readFileSync(`models/${name}.csv`, 'utf8'));
      let after = model.sheet;
      for (const cell of model.cells) after = renamed(after, cell.row, `x_${cell.id}`) as Sheet;
      const again = buildModel(after);
      expect(again.faults).toEqual(model.faults);
      model.plans.forEach((plan, p) => {
        expect(evaluatePlan(again.plans[p]!).numbers.map(String)).toEqual(evaluatePlan(plan).numbers.map(String));
      });
    },
  );
});

describe('a name for a label', () => {
  const sheet = sheetOf('extra_rent: 1\nround_value: 2');
  it.each([
    ['Extra rent', 'extra_rent_2'],
    ['Agua y luz: años', 'agua_y_luz_anos'],
    ['3 beds', 'beds'],
    ['round', 'round_2'],
    ['温室', 'entry'],
  ])('%s becomes %s', (label, name) => expect(freeName(sheet, label)).toBe(name));
});
