/** One of a few that can be chosen. */
export interface Option<T extends string> {
  readonly value: T;
  readonly label: string;
}
