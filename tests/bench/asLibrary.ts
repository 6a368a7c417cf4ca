// A plan's formulas as nodes that mathjs compiles, one for each cell: what the engine is held against.
import { all as everything, create as createWhole } from 'mathjs';
import { all as forNumbers, create as createForNumbers } from 'mathjs/number';
import { float } from '../../src/core/float';
import type { Ratio } from '../../src/core/ratio';
import type { Checked } from '../../src/formula/checked';
import type { FormulaFunction } from '../../src/formula/function';
import { functions } from '../../src/formula/functions';
import type { Cell } from '../../src/model/cell';
import type { Plan } from '../../src/model/model';

const signs: Readonly<Record<string, string>> = {
  add: '+',
  subtract: '-',
  multiply: '*',
  divide: '/',
  power: '^',
  less: '<',
  atMost: '<=',
  greater: '>',
  atLeast: '>=',
  equal: '==',
  unequal: '!=',
  and: 'and',
  or: 'or',
};

function factor({ over, under }: Ratio): string {
  return `${over === 1n ? '' : ` * ${over}`}${under === 1n ? '' : ` / ${under}`}`;
}

if (everything === undefined || forNumbers === undefined) throw new Error('the library has no functions');

/** What a formula's text is compiled with: the library as most use it, or its build for plain numbers alone. */
export const libraries = { whole: createWhole(everything), forNumbers: createForNumbers(forNumbers) };

/** A checked formula as a text with its unit factors written in. */
function textOf(node: Checked, cells: readonly Cell[]): string {
  const inner = (part: Checked): string => textOf(part, cells);
  switch (node.op) {
    case 'number':
      return node.text;
    case 'cell':
      return cells[node.cell]!.name;
    case 'convert':
      return `(${inner(node.of)}${factor(node.by)})`;
    case 'negate':
      return `(-${inner(node.of)})`;
    case 'not':
      return `(not ${inner(node.of)})`;
    case 'choose':
      return `(${inner(node.test)} ? ${inner(node.yes)} : ${inner(node.no)})`;
    case 'call':
      return `${node.fn.name}(${node.args.map(inner).join(', ')})`;
    default:
      return `(${inner(node.left)} ${signs[node.op]} ${inner(node.right)})`;
  }
}

/** Functions that the library does not have. */
const given = [...functions.keys()].filter((name) => !(name in libraries.whole && name in libraries.forNumbers));

function floating(fn: FormulaFunction): (...args: number[]) => number {
  return (...args) => fn.compute(float, args);
}

type Scope = Record<string, number | boolean | ((...args: number[]) => number)>;

/** Evaluates all cells of a plan through the library; returns them by name, true and false as they are. */
export function libraryEvaluation(
  library: Pick<typeof libraries.whole, 'compile'>,
  plan: Plan,
  cells: readonly Cell[],
): () => Scope {
  const scope: Scope = {};
  for (const name of given) scope[name] = floating(functions.get(name)!);
  const steps = plan.structure.order.flatMap((id) => {
    const content = plan.contents[id]!;
    const { name } = cells[id]!;
    if (content.kind === 'input') scope[name] = content.number.toNumber();
    return content.kind === 'calculated' ? [{ name, code: library.compile(textOf(content.node, cells)) }] : [];
  });
  return () => {
    for (const { name, code } of steps) scope[name] = code.evaluate(scope) as number | boolean;
    return scope;
  };
}
