import {
  createAccessorNode,
  createArrayNode,
  createAssignmentNode,
  createBlockNode,
  createConditionalNode,
  createConstantNode,
  createFunctionAssignmentNode,
  createFunctionNode,
  createIndexNode,
  createNode,
  createObjectNode,
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
  const createAccessorNode: Factory;
  const createArrayNode: Factory;
  const createAssignmentNode: Factory;
  const createBlockNode: Factory;
  const createConditionalNode: Factory;
  const createConstantNode: Factory;
  const createFunctionAssignmentNode: Factory;
  const createFunctionNode: Factory;
  const createIndexNode: Factory;
  const createNode: Factory;
  const createObjectNode: Factory;
  const createOperatorNode: Factory;
  const createParenthesisNode: Factory;
  const createParse: Factory<Parse>;
  const createRangeNode: Factory;
  const createRelationalNode: Factory;
  const createSymbolNode: Factory;
}

/** Stands for what a part needs in order to compute, which is never asked of it. */
function never(): never {
  throw new Error('the parser library is only to read formulas');
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
    AccessorNode: createAccessorNode({ subset: never, Node }),
    ArrayNode: createArrayNode({ Node }),
    AssignmentNode: createAssignmentNode({ subset: never, Node }),
    BlockNode: createBlockNode({ ResultSet: never, Node }),
    ConditionalNode: createConditionalNode({ Node }),
    ConstantNode: createConstantNode({ Node, isBounded: never }),
    FunctionAssignmentNode: createFunctionAssignmentNode({ typed: never, Node }),
    FunctionNode: createFunctionNode({ math: {}, Node, SymbolNode }),
    IndexNode: createIndexNode({ Node, size: never }),
    ObjectNode: createObjectNode({ Node }),
    OperatorNode: createOperatorNode({ Node }),
    ParenthesisNode: createParenthesisNode({ Node }),
    RangeNode: createRangeNode({ Node }),
    RelationalNode: createRelationalNode({ Node }),
    SymbolNode,
  });
}

/**
 * Reads a formula by mathjs's grammar, put together of the parts that read: the whole library with its computing is a
 * third larger.
 * @throws a SyntaxError with the place (`char`, from 1) where the text is no expression
 */
export const parseText: Parse = makeParse();
