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
export function namesIn(expression: Expression, found = new Set<string>()): Set<string> {
  if (expression.kind === 'name') found.add(expression.name);
  for (const part of partsOf(expression)) namesIn(part, found);
  return found;
}

/** An expression in words, with every operation of two values in brackets but the outermost. */
export function show(expression: Expression, inner = false): string {
  switch (expression.kind) {
    case 'number':
      return expression.text;
    case 'name':
      return expression.name;
    case 'unary':
      return expression.sign === '-' ? `-${show(expression.of, true)}` : `not ${show(expression.of, true)}`;
    case 'binary': {
      const text = `${show(expression.left, true)} ${expression.sign} ${show(expression.right, true)}`;
      return inner ? `(${text})` : text;
    }
    case 'choose': {
      const text = `${show(expression.test, true)} ? ${show(expression.yes, true)} : ${show(expression.no, true)}`;
      return inner ? `(${text})` : text;
    }
    case 'call':
      return `${expression.name}(${expression.args.map((arg) => show(arg)).join(', ')})`;
  }
}
