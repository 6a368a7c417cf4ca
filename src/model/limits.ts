import type { Model } from './model';
import { field, planOfColumn, type Sheet } from './sheet';

/** `most == 0 or hours <= most`, and `most == 0 ? hours : min(hours, most)`. */
const noLimitAtZero = [
  /(?<![\w.])([a-z][a-z0-9_]*) == 0 or .*<= \1(?!\w)/g,
  /(?<![\w.])([a-z][a-z0-9_]*) == 0 \? [^:]*: min\([^)]*\b\1\b/g,
];

/** Names of entries that are a limit, and none at 0: the formulas that hold something to them let 0 pass. */
export function limitsIn({ columns, rows }: Pick<Sheet, 'columns' | 'rows'>): Set<string> {
  const formulas = columns.filter((column) => column === 'formula' || planOfColumn(column) !== undefined);
  const texts = rows.flatMap((row) => formulas.map((column) => field(row, column)));
  const near = texts.filter((text) => text.includes(' == 0 '));
  return new Set(
    near.flatMap((text) =>
      noLimitAtZero.flatMap((pattern) => [...text.matchAll(pattern)].map(([, name = '']) => name)),
    ),
  );
}

const known = new WeakMap<Model['cells'], ReadonlySet<string>>();

/** Whether an entry is a limit that 0 lifts; a model's formulas are looked through once. */
export function isLimit({ cells, sheet }: Pick<Model, 'cells' | 'sheet'>, name: string): boolean {
  const before = known.get(cells);
  if (before !== undefined) return before.has(name);
  const found = limitsIn(sheet);
  known.set(cells, found);
  return found.has(name);
}
