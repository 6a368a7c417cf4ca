/** A word for one thing and for several. */
export interface Noun {
  readonly one: string;
  readonly many: string;
}
