const letters = ['A', 'B'] as const;

/** The letter of a column of numbers; none where there is only one. */
export function letterOf(column: number, columns: number): string {
  return columns === 1 ? '' : (letters[column] ?? '');
}

const furtherLetters = 'CDEFGHIJKLMNOPQRSTUVWXYZ';

/**
 * The letter of every plan of a model: A and B for the two that are compared, then C, D and so on in the file's order;
 * blank beyond Z, and for an only plan.
 * @param compared indices of the two, A first
 */
export function lettersOf(plans: number, compared: readonly number[]): string[] {
  let further = 0;
  return Array.from({ length: plans }, (_, plan) => {
    const column = compared.indexOf(plan);
    if (column !== -1) return letterOf(column, plans);
    further += 1;
    return furtherLetters[further - 1] ?? '';
  });
}
