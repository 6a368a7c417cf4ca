import fc from 'fast-check';

/** A written model of plain numbers without circles, and changes of its inputs. */
export interface RandomModel {
  readonly text: string;
  readonly inputs: readonly string[];
  readonly changes: readonly { readonly name: string; readonly text: string }[];
}

/** Formulas of two names; many of them fail for some numbers. */
const formulas: readonly ((a: string, b: string) => string)[] = [
  (a, b) => `${a} + ${b}`,
  (a, b) => `${a} - 2 * ${b}`,
  (a, b) => `${a} * ${b}`,
  (a, b) => `${a} / ${b}`,
  (a, b) => `${a} > ${b} ? ${a} : 1 / ${b}`,
  (a, b) => `min(${a}, ${b}) ^ 2`,
  (a) => `sqrt(${a})`,
  (a, b) => `log(${a}) + ${b}`,
  (a, b) => `floor(${a} / 3) + ${b}`,
  (a, b) => `max(${a}, ${b}, 0) - abs(${b})`,
  (a, b) => `${a} > 0 and 1 / ${a} > ${b} ? 1 : 0`,
  (a, b) => `${a} == ${b} or ${a} / ${b} < 1 ? ${a} : -${b}`,
];

const number = fc.oneof(
  fc.integer({ min: -4, max: 4 }),
  fc.integer({ min: -9999, max: 9999 }).map((n) => n / 100),
);

/** A cell: an input's number, or the formula and the two places among the cells before it (as shares) that it names. */
const cell = fc.record({
  number,
  isInput: fc.boolean(),
  formula: fc.nat(formulas.length - 1),
  at: fc.tuple(fc.nat(999), fc.nat(999)),
  line: fc.nat(),
});

/** Models of up to 30 cells, their lines in any order, with up to five changes of inputs. */
export const randomModels: fc.Arbitrary<RandomModel> = fc
  .record({
    cells: fc.array(cell, { minLength: 2, maxLength: 30 }),
    changes: fc.array(fc.record({ at: fc.nat(999), number }), { minLength: 1, maxLength: 5 }),
  })
  .map(({ cells, changes }) => {
    const lines = cells.map(({ number, isInput, formula, at }, i) => {
      const [a = '', b = ''] = at.map((place) => `c${place % Math.max(i, 1)}`);
      return isInput || i === 0 ? `c${i}: ${number}` : `c${i}: ${formulas[formula]?.(a, b) ?? ''}`;
    });
    const inputs = cells.flatMap(({ isInput }, i) => (isInput || i === 0 ? `c${i}` : []));
    const shuffled = cells.map(({ line }, i) => ({ line, i })).sort((a, b) => a.line - b.line);
    return {
      text: shuffled.map(({ i }) => lines[i]).join('\n'),
      inputs,
      changes: changes.map(({ at, number }) => ({ name: inputs[at % inputs.length] ?? 'c0', text: String(number) })),
    };
  });
