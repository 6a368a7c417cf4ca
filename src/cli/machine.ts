/** What the commands need of the machine that they run on. */
export interface Machine {
  /** The words with which the program was started, as its help repeats them. */
  readonly program: string;
  /** Gives a file's bytes, or throws where there is no such file. */
  readonly readFile: (path: string) => Uint8Array;
  readonly isThere: (path: string) => boolean;
  /** Writes a file in UTF-8, or throws the reason for which it cannot. */
  readonly writeFile: (path: string, text: string) => void;
  /** The page of a live case without a case; undefined where it has not been built. */
  readonly livePage: () => string | undefined;
  /** The number of the day. */
  readonly today: () => number;
}
