/** How one kind of figure is computed. */
export interface Entry {
  /** Its id, used by links. */
  readonly id: string;
  readonly what: string;
  readonly how: string;
  /** The formula, a line each, in the marks of `formulaPieces`. */
  readonly formulas?: readonly string[];
  /** The design of the computation, where there is one: number of points, sequence, tolerance. */
  readonly design?: string;
  readonly source: string;
  readonly limits: string;
  /** The screens that use it. */
  readonly where: string;
}

/** The entries on one subject. */
export interface Chapter {
  readonly heading: string;
  readonly entries: readonly Entry[];
}
