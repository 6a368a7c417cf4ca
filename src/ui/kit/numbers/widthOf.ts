/** Width of a number in digits: signs count as one digit, marks between digits as half of one. */
export function widthOf(text: string): number {
  const marks = text.replace(/[\p{L}\d+−]/gu, '').length;
  return text.length - marks / 2;
}
