import ts from 'typescript';

const tag = /^(?:wording|say|sayLinked)$|^wordingOf\(/;
const isTagged = (node: ts.Node): node is ts.TaggedTemplateExpression =>
  ts.isTaggedTemplateExpression(node) && tag.test(node.tag.getText());

type Text = ts.StringLiteralLike | ts.TemplateExpression;
const isText = (node: ts.Node): node is Text => ts.isStringLiteralLike(node) || ts.isTemplateExpression(node);

/** The words of a literal, with … for what is put in. */
function wordsOf(node: Text): string {
  return ts.isTemplateExpression(node)
    ? [node.head.text, ...node.templateSpans.map(({ literal }) => literal.text)].join('…')
    : node.text;
}

/** Whether a literal is code by where it stands: a key, a comparison, a message for developers, a context. */
function isCode(node: Text): boolean {
  const { parent } = node;
  if (ts.isPropertyAssignment(parent))
    return parent.name === node || /^(?:example|formula|signature)$/.test(parent.name.getText());
  if (ts.isNewExpression(parent)) return /^(?:Error|RegExp)$/.test(parent.expression.getText());
  if (ts.isBinaryExpression(parent)) return /^[!=]==$/.test(parent.operatorToken.getText());
  if (ts.isCallExpression(parent)) return /^(?:wordingOf|translated|inFile)$/.test(parent.expression.getText());
  return ts.isElementAccessExpression(parent) || ts.isCaseClause(parent) || ts.isTaggedTemplateExpression(parent);
}

/** Signs that formulas, markup, options and names in files have, and sentences have not. */
const codeSigns = /[<>=*_{}@#]|--|\dpx /;
/** Three words in a row, a capital before small letters, or words with the end of a sentence behind. */
const sentence = /\p{L}{2,} \p{L}+ \p{L}{2,}|^\p{Lu}\p{Ll}+|\p{L}{2,} .*[.?!:]$/u;

interface Found {
  readonly at: string;
  readonly text: string;
}

function visitAll(path: string, code: string, look: (node: ts.Node, at: string) => Found[]): Found[] {
  const file = ts.createSourceFile(path, code, ts.ScriptTarget.Latest, true);
  const found: Found[] = [];
  const visit = (node: ts.Node): void => {
    if (ts.isImportDeclaration(node) || ts.isExportDeclaration(node) || ts.isTypeNode(node)) return;
    found.push(...look(node, `${path}:${String(file.getLineAndCharacterOfPosition(node.getStart()).line + 1)}`));
    ts.forEachChild(node, visit);
  };
  visit(file);
  return found;
}

/** Literals in a file of code that look like a text for people and do not go through the catalogue. */
export function looseTexts(path: string, code: string): Found[] {
  return visitAll(path, code, (node, at) => {
    if (!isText(node) || isCode(node)) return [];
    const text = wordsOf(node);
    return !codeSigns.test(text) && sentence.test(text) ? [{ at, text }] : [];
  });
}

function holder(node: ts.Node): ts.TaggedTemplateExpression | undefined {
  for (let up = node.parent as ts.Node | undefined; up !== undefined && !ts.isStatement(up); up = up.parent)
    if (isTagged(up)) return up;
  return undefined;
}

/**
 * Texts that are put together from pieces, which no other language can follow: a text added to another, and one inside
 * another that is neither a whole sentence nor begins as one.
 */
export function gluedTexts(path: string, code: string): Found[] {
  return visitAll(path, code, (node, at) => {
    if (ts.isBinaryExpression(node) && node.operatorToken.kind === ts.SyntaxKind.PlusToken)
      return isTagged(node.left) || isTagged(node.right) ? [{ at, text: node.getText() }] : [];
    if (!isTagged(node) || holder(node) === undefined) return [];
    const text = wordsOf(node.template);
    return /^[\p{Lu}¿«“]/u.test(text) ? [] : [{ at, text }];
  });
}
