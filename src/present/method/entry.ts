/** How one kind of figure is worked out. */
export interface Entry {
  /** As links name it. */
  readonly id: string;
  readonly what: string;
  readonly how: string;
  /** The formula, a line each, in the marks of `formulaPieces`. */
  readonly formulas?: readonly string[];
  /** How many points, from which sequence, how closely searched; where there is something of the kind to say. */
  readonly design?: string;
  readonly source: string;
  readonly limits: string;
  /** The screens that use it. */
  readonly where: string;
}

/** Entries on one matter. */
export interface Chapter {
  readonly heading: string;
  readonly entries: readonly Entry[];
}
