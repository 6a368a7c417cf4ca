/** Where a fault stands in a model file. */
export interface Where {
  /** Record number: the header is 1, the file as a whole is 0. */
  readonly row: number;
  /** Column name; blank for a whole row. */
  readonly column: string;
  /** Name of the cell; blank where there is none. */
  readonly cell: string;
  /** The offending text. */
  readonly text: string;
}

/** A user's fault, as data. The message says what is wrong, a colon, the offending text, then what would fix it. */
export interface Problem {
  readonly code: string;
  readonly message: string;
  readonly where: Where;
}

const nowhere: Where = { row: 0, column: '', cell: '', text: '' };

/** A fault with the given place; what is not said of the place is blank. */
export function problem(code: string, message: string, where: Partial<Where> = {}): Problem {
  return { code, message, where: { ...nowhere, ...where } };
}

/** The same fault with more said about its place; what is already known of it stays. */
export function placed(fault: Problem, where: Partial<Where>): Problem {
  const known = Object.fromEntries(Object.entries(fault.where).filter(([, value]) => value !== '' && value !== 0));
  return { ...fault, where: { ...nowhere, ...where, ...known } };
}
