import { readFileSync } from 'node:fs';
import ts from 'typescript';
import { textKey } from '../../src/language/language';
import { filesIn } from '../structure/source';

/** One text of the program, as it is written in English. */
export interface TextSource {
  /** Under which a catalogue has it. */
  readonly key: string;
  /** `src/present/x.ts:12`. */
  readonly at: string;
  /** What is put into {0}, {1} …, as the code says it. */
  readonly parts: readonly string[];
}

/** The templates that are said in the language of the page. */
const tags = ['wording', 'say', 'sayLinked'];

/** The context of `wordingOf('…')`; undefined for a tag without one, null where the template is no text. */
function contextOf(tag: ts.Expression): string | null | undefined {
  if (ts.isIdentifier(tag)) return tags.includes(tag.text) ? undefined : null;
  if (!ts.isCallExpression(tag) || !ts.isIdentifier(tag.expression) || tag.expression.text !== 'wordingOf') return null;
  const [context] = tag.arguments;
  if (context === undefined || !ts.isStringLiteral(context)) throw new Error(`no plain context: ${tag.getText()}`);
  return context.text;
}

/** All texts in a file of code. @param path from the root of the repository */
function textsIn(path: string, code: string): TextSource[] {
  const file = ts.createSourceFile(path, code, ts.ScriptTarget.Latest, true);
  const found: TextSource[] = [];
  const visit = (node: ts.Node): void => {
    const context = ts.isTaggedTemplateExpression(node) ? contextOf(node.tag) : null;
    if (ts.isTaggedTemplateExpression(node) && context !== null) {
      const { template } = node;
      const isPlain = ts.isNoSubstitutionTemplateLiteral(template);
      const texts = isPlain
        ? [template.text]
        : [template.head.text, ...template.templateSpans.map(({ literal }) => literal.text)];
      const line = file.getLineAndCharacterOfPosition(node.getStart()).line + 1;
      const key = textKey(texts, context);
      // What has no letter of its own, such as "{0}: {1}", is the same in every language unless it tells what it means.
      if (context !== undefined || /\p{L}/u.test(texts.join(' '))) {
        const parts = isPlain ? [] : template.templateSpans.map(({ expression }) => expression.getText());
        found.push({ key, at: `${path}:${String(line)}`, parts });
      }
    }
    ts.forEachChild(node, visit);
  };
  visit(file);
  return found;
}

/** All texts of the program, in the order of their files. */
export function textsOfProgram(): TextSource[] {
  return filesIn('src')
    .filter((path) => /\.tsx?$/.test(path))
    .flatMap((path) => textsIn(path, readFileSync(path, 'utf8')));
}
