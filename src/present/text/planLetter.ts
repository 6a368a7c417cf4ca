const letters = ['A', 'B'] as const;

/** The letter of a column of numbers; none where there is only one. */
export function letterOf(column: number, columns: number): string {
  return columns === 1 ? '' : (letters[column] ?? '');
}
