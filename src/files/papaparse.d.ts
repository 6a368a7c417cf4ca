/**
 * What `csv` asks of papaparse. Its published types bring in all of Node's, among which the engine would find what it
 * must not know.
 */
declare module 'papaparse' {
  export interface ParseError {
    readonly code: 'MissingQuotes' | 'InvalidQuotes' | 'UndetectableDelimiter' | 'TooFewFields' | 'TooManyFields';
  }

  export interface ParseResult<Data> {
    readonly data: Data;
    readonly errors: readonly ParseError[];
    /** `cursor` counts UTF-16 code units from the start of the text, a byte-order mark left out. */
    readonly meta: { readonly cursor: number };
  }

  interface ParseSettings {
    readonly delimiter: string;
    readonly newline: string;
  }

  const Papa: {
    /** Gives one row at a time to `step`. */
    parse<Row>(text: string, settings: ParseSettings & { step(result: ParseResult<Row>): void }): void;
    /** Gives all rows at once. */
    parse<Row>(text: string, settings: ParseSettings): ParseResult<Row[]>;
  };
  export default Papa;
}
