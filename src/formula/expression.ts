/** Operators between two values, by the sign that is written. */
export type BinarySign = '+' | '-' | '*' | '/' | '^' | '<' | '<=' | '>' | '>=' | '==' | '!=' | 'and' | 'or';

/** A formula as parsed: the grammar is right, nothing is known yet of its names, units or kinds. */
export type Expression =
  | { readonly kind: 'number'; readonly text: string }
  | { readonly kind: 'name'; readonly name: string }
  | { readonly kind: 'unary'; readonly sign: '-' | 'not'; readonly of: Expression }
  | { readonly kind: 'binary'; readonly sign: BinarySign; readonly left: Expression; readonly right: Expression }
  | { readonly kind: 'choose'; readonly test: Expression; readonly yes: Expression; readonly no: Expression }
  | { readonly kind: 'call'; readonly name: string; readonly args: readonly Expression[] };

/** An expression's parts, left to right. */
export function partsOf(expression: Expression): readonly Expression[] {
  switch (expression.kind) {
    case 'unary':
      return [expression.of];
    case 'binary':
      return [expression.left, expression.right];
    case 'choose':
      return [expression.test, expression.yes, expression.no];
    case 'call':
      return expression.args;
    default:
      return [];
  }
}

/** The names of cells that an expression reads, each once, in the order met; both arms of a choice count. */
export function namesIn(expression: Expression): Set<string> {
  const found = new Set<string>();
  const waiting = [expression];
  for (let next = waiting.pop(); next !== undefined; next = waiting.pop()) {
    if (next.kind === 'name') found.add(next.name);
    waiting.push(...[...partsOf(next)].reverse());
  }
  return found;
}

/** An operation of two values. */
export type Binary = Extract<Expression, { kind: 'binary' }>;

/**
 * The operations down the left side of an expression, innermost first, and what the innermost begins with. A long sum
 * is that deep on its left, so whoever walks it takes this side in a loop.
 */
export function leftSide(expression: Binary): { start: Expression; operations: Binary[] } {
  const operations: Binary[] = [];
  let start: Expression = expression;
  for (; start.kind === 'binary'; start = start.left) operations.push(start);
  return { start, operations: operations.reverse() };
}

/** An expression in words; operations inside others stand in brackets. Text beyond `longest` characters is left out. */
export function show(expression: Expression, longest = Infinity): string {
  return shown(expression, false, longest).slice(0, longest);
}

function shown(expression: Expression, inner: boolean, room: number): string {
  if (room <= 0) return '';
  switch (expression.kind) {
    case 'number':
      return expression.text;
    case 'name':
      return expression.name;
    case 'unary':
      return `${expression.sign === '-' ? '-' : 'not '}${shown(expression.of, true, room - 1)}`;
    case 'call':
      return `${expression.name}(${expression.args.map((arg) => shown(arg, false, room - 1)).join(', ')})`;
    case 'choose': {
      const [test, yes, no] = [expression.test, expression.yes, expression.no].map((part) =>
        shown(part, true, room - 3),
      );
      return bracketed(`${test} ? ${yes} : ${no}`, inner);
    }
    case 'binary':
      return bracketed(shownBinary(expression, room), inner);
  }
}

function shownBinary(expression: Binary, room: number): string {
  const { start, operations } = leftSide(expression);
  return operations.reduce(
    (left, { sign, right }, i) => {
      if (left.length > room) return left;
      return `${bracketed(left, i > 0)} ${sign} ${shown(right, true, room - left.length)}`;
    },
    shown(start, true, room),
  );
}

function bracketed(text: string, inner: boolean): string {
  return inner ? `(${text})` : text;
}
