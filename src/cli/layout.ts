/** Widest line of a text for people, in characters. */
const widest = 100;
const unbroken = '\u00a0';

/** Words of a text in lines of a width; a word that is longer stands alone. */
function lines(text: string, width: number): string[] {
  const filled: string[] = [];
  for (const word of text.split(' ')) {
    const last = filled.at(-1);
    if (last !== undefined && last.length + 1 + word.length <= width) filled[filled.length - 1] = `${last} ${word}`;
    else filled.push(word);
  }
  return filled;
}

/** Words that stay in one line, such as a number and its unit: joined by a blank that no line breaks at. */
export function joinedWords(...words: readonly string[]): string {
  return words.filter(Boolean).join(' ').replaceAll(' ', unbroken);
}

/** A paragraph whose lines all begin so many blanks from the left. */
export function paragraph(text: string, indent = 0): string {
  return lines(text, widest - indent)
    .map((line) => `${' '.repeat(indent)}${line.replaceAll(unbroken, ' ')}\n`)
    .join('');
}

/** A term at the left with its text beside it, from a column on; below it where the term is too long. */
export function described(term: string, text: string, column: number): string {
  const beside = paragraph(text, column);
  const head = `  ${term}`;
  return head.length < column - 1 ? head.padEnd(column) + beside.slice(column) : `${head}\n${beside}`;
}
