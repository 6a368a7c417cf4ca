/** A piece of a text row: words, or a figure that stands in braces. */
export type TextPart =
  | { readonly kind: 'words'; readonly text: string }
  | {
      readonly kind: 'figure';
      /** The formula that gives it, as it is written. */
      readonly formula: string;
      /** What stands behind the formula: a unit, a plan, that it is the answer. */
      readonly ways: readonly string[];
      /** The whole of it with its braces. */
      readonly text: string;
    };

/** A pair of braces with no other brace between them. */
const braced = /\{([^{}]*)\}/g;

/** A text in pieces: `The bed has {boards} boards.` has a figure between two pieces of words. */
export function textParts(text: string): TextPart[] {
  const parts: TextPart[] = [];
  let end = 0;
  for (const found of text.matchAll(braced)) {
    if (found.index > end) parts.push({ kind: 'words', text: text.slice(end, found.index) });
    const [formula = '', ...ways] = found[1]!.split(';').map((part) => part.trim());
    parts.push({ kind: 'figure', formula, ways, text: found[0] });
    end = found.index + found[0].length;
  }
  if (end < text.length) parts.push({ kind: 'words', text: text.slice(end) });
  return parts;
}

/** A text with the inside of its braces changed, part by part between the semicolons; blanks around a part stay. */
function withParts(text: string, change: (part: string, index: number) => string): string {
  return text.replaceAll(braced, (_whole, inside: string) => {
    const parts = inside.split(';').map((part, i) => {
      const [, before = '', middle = '', after = ''] = /^(\s*)(.*?)(\s*)$/s.exec(part) ?? [];
      return before + change(middle, i) + after;
    });
    return `{${parts.join(';')}}`;
  });
}

/** A text in which the formulas of its figures are changed. */
export function withFormulas(text: string, change: (formula: string) => string): string {
  return withParts(text, (part, i) => (i === 0 ? change(part) : part));
}

/** A text in which what stands behind the formulas of its figures is changed. */
export function withWays(text: string, change: (way: string) => string): string {
  return withParts(text, (part, i) => (i === 0 ? part : change(part)));
}

/** A text whose figures tell of a plan by another name. */
export function withPlanNamed(text: string, from: string, name: string): string {
  return withWays(text, (way) => (way === from ? name : way));
}
