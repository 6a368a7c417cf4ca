/** One of the options of a choice. */
export interface Option<T extends string> {
  readonly value: T;
  readonly label: string;
}
