import { wording } from '../language/wording';
import { problem, type Problem } from '../core/problem';
import type { BinarySign, Expression } from './expression';
import { parseText, type LibraryNode } from './mathParser';
import { scan, type Token } from './scan';

const binarySigns: ReadonlyMap<string, BinarySign> = new Map([
  ['add', '+'],
  ['subtract', '-'],
  ['multiply', '*'],
  ['divide', '/'],
  ['pow', '^'],
  ['smaller', '<'],
  ['smallerEq', '<='],
  ['larger', '>'],
  ['largerEq', '>='],
  ['equal', '=='],
  ['unequal', '!='],
  ['and', 'and'],
  ['or', 'or'],
]);
const comparisons = new Set(['<', '<=', '>', '>=', '==', '!=']);

/** A refusal on the way through the parser's tree; it leaves this file as a returned fault. */
class Refusal extends Error {
  constructor(readonly fault: Problem) {
    super(fault.message);
  }
}

function refuse(node: LibraryNode, what: string, fix: string): never {
  const text = node.toString().slice(0, 60);
  throw new Refusal(problem('formula-grammar', `${what}: ${text}. ${fix}`, { text }));
}

function readOperator(node: LibraryNode): Expression {
  if (node.args?.length === 1) return readUnary(node, node.args[0]!);
  const operations: LibraryNode[] = [];
  let start = node;
  for (; start.type === 'OperatorNode' && start.args?.length === 2; start = start.args[0]!) operations.push(start);
  return operations.reduceRight((left, operation) => readPair(operation, left), read(start));
}

/** An operation of two values whose left one has been read. */
function readPair(node: LibraryNode, left: Expression): Expression {
  if (node.implicit === true)
    refuse(node, wording`a sign is missing between two values`, wording`Write * to multiply.`);
  const sign = typeof node.fn === 'string' ? binarySigns.get(node.fn) : undefined;
  const [first, second] = node.args ?? [];
  if (sign === undefined || first === undefined || second === undefined) {
    return refuse(
      node,
      wording`operation not known`,
      wording`Use + - * / ^, comparisons, and, or, not, and the listed functions.`,
    );
  }
  if (comparisons.has(sign) && isBareNot(first)) {
    refuse(
      node,
      wording`not stands directly before a comparison`,
      wording`Put the comparison in brackets: not (a > b).`,
    );
  }
  return { kind: 'binary', sign, left, right: read(second) };
}

function isBareNot(node: LibraryNode): boolean {
  return node.type === 'OperatorNode' && node.fn === 'not';
}

function readUnary(node: LibraryNode, of: LibraryNode): Expression {
  if (node.fn === 'unaryMinus') return { kind: 'unary', sign: '-', of: read(of) };
  if (node.fn === 'not') return { kind: 'unary', sign: 'not', of: read(of) };
  const fix = node.fn === 'unaryPlus' ? wording`Leave the leading plus out.` : wording`Use - or not.`;
  return refuse(node, wording`sign not allowed before a value`, fix);
}

function readCall(node: LibraryNode): Expression {
  const fn = node.fn;
  if (typeof fn !== 'object' || fn.type !== 'SymbolNode' || fn.name === undefined) {
    return refuse(node, wording`not a function`, wording`A bracket after a value needs a sign before it, such as *.`);
  }
  return { kind: 'call', name: fn.name, args: (node.args ?? []).map(read) };
}

function readConstant(node: LibraryNode): Expression {
  if (typeof node.value === 'number' && Number.isFinite(node.value))
    return { kind: 'number', text: String(node.value) };
  return refuse(
    node,
    wording`not a number`,
    wording`true, false and their like are no values; compare instead, as in a > b.`,
  );
}

function read(node: LibraryNode): Expression {
  switch (node.type) {
    case 'ConstantNode':
      return readConstant(node);
    case 'SymbolNode':
      return { kind: 'name', name: node.name ?? '' };
    case 'ParenthesisNode':
      return node.content === undefined
        ? refuse(node, wording`empty brackets`, wording`Fill or remove them.`)
        : read(node.content);
    case 'OperatorNode':
      return readOperator(node);
    case 'FunctionNode':
      return readCall(node);
    case 'ConditionalNode':
      return readChoice(node);
    case 'RelationalNode':
      return refuse(node, wording`comparisons in a chain`, wording`Join two comparisons by and: a < b and b < c.`);
    default:
      return refuse(node, wording`not part of a formula`, wording`Use numbers, names, signs and the listed functions.`);
  }
}

function readChoice({ condition, trueExpr, falseExpr, ...node }: LibraryNode): Expression {
  if (condition === undefined || trueExpr === undefined || falseExpr === undefined) {
    return refuse(
      { ...node, toString: () => '?' },
      wording`choice incomplete`,
      wording`Write condition ? value : other value.`,
    );
  }
  return { kind: 'choose', test: read(condition), yes: read(trueExpr), no: read(falseExpr) };
}

function unreadable(formula: string, error: unknown): Problem {
  const at = (error as { char?: number }).char ?? formula.length + 1;
  const rest = formula.slice(Math.max(0, at - 1), at + 11).trim();
  const isDecimalComma = /\d,\d/.test(formula.slice(Math.max(0, at - 2), at + 1));
  const hint = isDecimalComma ? wording`In a formula decimals follow a point.` : wording`Look at character ${at}.`;
  const place = rest === '' ? wording`It stops too early.` : hint;
  return problem('formula-grammar', wording`formula not readable: ${rest || formula.slice(-12)}. ${place}`, {
    text: rest || formula,
  });
}

function foreignName(tokens: readonly Token[]): Problem | undefined {
  const hex = tokens.find(({ kind, text }, i) => kind === 'name' && /^[xbo]/i.test(text) && isZeroBefore(tokens, i));
  if (hex === undefined) return undefined;
  const text = `0${hex.text}`;
  return problem('formula-grammar', wording`number not decimal: ${text}. Write it in decimal digits.`, { text });
}

function isZeroBefore(tokens: readonly Token[], i: number): boolean {
  const before = tokens[i - 1];
  return before?.text === '0' && before.at + 1 === tokens[i]?.at;
}

/**
 * Reads a formula: mathjs's grammar and precedence, cut down to scalars (no assignment, function definition, access,
 * text, table, range, unit word, implicit multiplication, percent, unary plus, or chained comparison).
 * @returns the expression, or the first fault in its text
 */
export function parse(formula: string): Expression | Problem {
  const tokens = scan(formula);
  if ('code' in tokens) return tokens;
  if (tokens.length === 0)
    return problem('formula-blank', wording`formula blank: nothing to compute. Enter a number or an expression.`);
  const foreign = foreignName(tokens);
  if (foreign !== undefined) return foreign;
  try {
    return read(parseText(formula));
  } catch (error) {
    if (error instanceof Refusal) return error.fault;
    return unreadable(formula, error);
  }
}
