import { readdirSync, readFileSync } from 'node:fs';
import { join, relative, sep } from 'node:path';
import ts from 'typescript';

/** What the structure rules look at in one file. */
export interface Source {
  /** From the root of the repository, with slashes: "src/core/unit.ts". */
  path: string;
  /** What the file imports or passes on, as written: "../core/unit", "decimal.js". */
  imports: string[];
  /** Every name the code uses, without comments, strings, and names of members; "new Date()" where it asks for now. */
  names: Set<string>;
  /** Every access to a member, as written: "Math.random", "test.describe.skip". */
  members: Set<string>;
  /** Every key of an object literal. */
  keys: Set<string>;
  /** Nothing in it but "import ..." and "export { ... } from ...". */
  onlyPassesOn: boolean;
  /** It has an "export * from ...". */
  passesOnAll: boolean;
}

function imported(node: ts.Node): string | undefined {
  const target =
    ts.isImportDeclaration(node) || ts.isExportDeclaration(node)
      ? node.moduleSpecifier
      : ts.isCallExpression(node) && node.expression.kind === ts.SyntaxKind.ImportKeyword
        ? node.arguments[0]
        : ts.isImportTypeNode(node) && ts.isLiteralTypeNode(node.argument)
          ? node.argument.literal
          : undefined;
  return target && ts.isStringLiteralLike(target) ? target.text : undefined;
}

function namesAMember(node: ts.Identifier): boolean {
  const { parent } = node;
  return ts.isPropertyAccessExpression(parent)
    ? parent.name === node
    : (ts.isPropertyAssignment(parent) || ts.isClassElement(parent) || ts.isTypeElement(parent)) &&
        parent.name === node;
}

/** "new Date()", "new Date" or "Date(...)": now, and not a moment that was passed in. */
function readsClock(node: ts.Node): boolean {
  if (!ts.isNewExpression(node) && !ts.isCallExpression(node)) return false;
  const isDate = ts.isIdentifier(node.expression) && node.expression.text === 'Date';
  return isDate && (ts.isCallExpression(node) || !node.arguments?.length);
}

/** Reads one file of TypeScript; `text` need not be on the disk. */
export function readSource(path: string, text: string): Source {
  const file = ts.createSourceFile(path, text, ts.ScriptTarget.Latest, true);
  const imports: string[] = [];
  const [names, members, keys] = [new Set<string>(), new Set<string>(), new Set<string>()];
  const visit = (node: ts.Node): void => {
    const from = imported(node);
    if (from !== undefined) imports.push(from);
    if (ts.isIdentifier(node) && !namesAMember(node)) names.add(node.text);
    if (ts.isPropertyAccessExpression(node)) members.add(`${node.expression.getText(file)}.${node.name.text}`);
    if (readsClock(node)) names.add(ts.isNewExpression(node) ? 'new Date()' : 'Date()');
    if (ts.isPropertyAssignment(node)) keys.add(node.name.getText(file));
    ts.forEachChild(node, visit);
  };
  visit(file);
  const passedOn = file.statements.filter(ts.isExportDeclaration);
  const onlyImports = file.statements.filter(ts.isImportDeclaration);
  return {
    path,
    imports,
    names,
    members,
    keys,
    onlyPassesOn: passedOn.length > 0 && passedOn.length + onlyImports.length === file.statements.length,
    passesOnAll: passedOn.some(({ exportClause }) => exportClause === undefined),
  };
}

const root = join(import.meta.dirname, '../..');

/** Every file under a folder of the repository, by its path from the root with slashes. */
export function filesIn(folder: string): string[] {
  return readdirSync(join(root, folder), { recursive: true, encoding: 'utf8', withFileTypes: true })
    .filter((entry) => entry.isFile())
    .map((entry) => relative(root, join(entry.parentPath, entry.name)).replaceAll(sep, '/'))
    .sort();
}

/** Every TypeScript file under a folder of the repository. */
export function readFolder(folder: string): Source[] {
  return filesIn(folder)
    .filter((path) => /\.tsx?$/.test(path))
    .map((path) => readSource(path, readFileSync(join(root, path), 'utf8')));
}
