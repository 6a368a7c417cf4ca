/** The width of a text in pixels. */
export type MeasureText = (text: string) => number;

const ellipsis = '…';

/** The longest beginning that fits with what is put after it; at least one letter, so that there is an end. */
function beginning(letters: readonly string[], width: number, after: string, measure: MeasureText): number {
  let [fits, over] = [1, letters.length + 1];
  while (over - fits > 1) {
    const half = Math.floor((fits + over) / 2);
    if (measure(letters.slice(0, half).join('') + after) <= width) fits = half;
    else over = half;
  }
  return fits;
}

/** A text that is no wider than a width, cut with … where it is. */
export function fitted(text: string, width: number, measure: MeasureText): string {
  if (measure(text) <= width) return text;
  const letters = Array.from(text);
  return (
    letters
      .slice(0, beginning(letters, width, ellipsis, measure))
      .join('')
      .trimEnd() + ellipsis
  );
}

/** Words that are wider than a line, in pieces that are not. */
function broken(text: string, width: number, measure: MeasureText): string[] {
  return text.split(/\s+/).flatMap((word) => {
    const pieces: string[] = [];
    let letters = Array.from(word);
    while (letters.length > 0 && measure(letters.join('')) > width) {
      const length = beginning(letters, width, '', measure);
      pieces.push(letters.slice(0, length).join(''));
      letters = letters.slice(length);
    }
    return [...pieces, letters.join('')].filter((piece) => piece !== '');
  });
}

/**
 * A text in lines that are no wider than a width, broken between words where that is possible.
 * @param most lines; what does not fit into the last one is cut with …
 */
export function wrapped(text: string, width: number, most: number, measure: MeasureText): string[] {
  const lines: string[] = [];
  // What stands beyond so many letters fits into no line, as each is at least a pixel wide.
  const letters = Array.from(text.trim().replace(/\s+/g, ' ')).slice(0, (most + 1) * (width + 1));
  for (const word of broken(letters.join(''), width, measure)) {
    const last = lines.at(-1);
    if (last !== undefined && measure(`${last} ${word}`) <= width) lines[lines.length - 1] = `${last} ${word}`;
    else lines.push(word);
  }
  if (lines.length <= most) return lines;
  return [...lines.slice(0, most - 1), fitted(lines.slice(most - 1).join(' '), width, measure)];
}

/** Whether a text reads from right to left, by the first letter that has a direction (as UAX #9, rules P2 and P3). */
export function readsLeftward(text: string): boolean {
  const first = /\p{L}/u.exec(text)?.[0] ?? '';
  return /[\p{Script=Hebrew}\p{Script=Arabic}\p{Script=Syriac}\p{Script=Thaana}\p{Script=Nko}]/u.test(first);
}
