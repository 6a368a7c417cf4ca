/** Width of a number in digits: signs are as wide as a digit, marks between digits half as wide. */
export function widthOf(text: string): number {
  const marks = text.replace(/[\p{L}\d+−]/gu, '').length;
  return text.length - marks / 2;
}
