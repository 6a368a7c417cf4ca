import {
  createConditionalNode,
  createConstantNode,
  createFunctionNode,
  createNode,
  createOperatorNode,
  createParenthesisNode,
  createParse,
  createRangeNode,
  createRelationalNode,
  createSymbolNode,
} from 'mathjs/number';

/** A node of the parser's tree, as far as it is read here. */
export interface LibraryNode {
  readonly type: string;
  readonly value?: unknown;
  readonly name?: string;
  readonly content?: LibraryNode;
  readonly fn?: string | LibraryNode;
  readonly args?: readonly LibraryNode[];
  readonly implicit?: boolean;
  readonly condition?: LibraryNode;
  readonly trueExpr?: LibraryNode;
  readonly falseExpr?: LibraryNode;
  toString(): string;
}

type Parse = (formula: string) => LibraryNode;

/** Makes a part of the library of other parts, each by its name. */
type Factory<Part = unknown> = (parts: Readonly<Record<string, unknown>>) => Part;

// Its published types leave the factories out.
declare module 'mathjs/number' {
  const createConditionalNode: Factory;
  const createConstantNode: Factory;
  const createFunctionNode: Factory;
  const createNode: Factory;
  const createOperatorNode: Factory;
  const createParenthesisNode: Factory;
  const createParse: Factory<Parse>;
  const createRangeNode: Factory;
  const createRelationalNode: Factory;
  const createSymbolNode: Factory;
}

/** Stands for what a part needs in order to compute, and for the nodes of marks that `scan` lets nobody write. */
function never(): never {
  throw new Error('the parser library is asked for what no formula holds');
}

/** In place of the library's dispatch by the types of arguments: the parser is only ever given a text. */
const typed = Object.assign((_name: string, signatures: Readonly<Record<string, unknown>>) => signatures['string'], {
  addConversion: () => undefined,
});

function makeParse(): Parse {
  const Node = createNode({ mathWithTransform: {} });
  const SymbolNode = createSymbolNode({ math: {}, Node });
  return createParse({
    typed,
    numeric: Number,
    config: { number: 'number' },
    AccessorNode: never,
    ArrayNode: never,
    AssignmentNode: never,
    BlockNode: never,
    ConditionalNode: createConditionalNode({ Node }),
    ConstantNode: createConstantNode({ Node, isBounded: never }),
    FunctionAssignmentNode: never,
    FunctionNode: createFunctionNode({ math: {}, Node, SymbolNode }),
    IndexNode: never,
    ObjectNode: never,
    OperatorNode: createOperatorNode({ Node }),
    ParenthesisNode: createParenthesisNode({ Node }),
    RangeNode: createRangeNode({ Node }),
    RelationalNode: createRelationalNode({ Node }),
    SymbolNode,
  });
}

/**
 * Reads a text that `scan` let pass by mathjs's grammar, put together of the parts that read such texts: with what
 * computes, and with tables, blocks and assignments, the library is more than twice as large.
 * @throws a SyntaxError with the place (`char`, from 1) where the text is no expression
 */
export const parseText: Parse = makeParse();
