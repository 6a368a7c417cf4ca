/** A batch that the large watch kept, while it can be taken back. */
export interface Lap {
  /** Its record number in the trials. */
  readonly row: number;
  /** When it began, in milliseconds since 1970. */
  readonly since: number;
  /** Its seconds as they were written. */
  readonly seconds: string;
}

/** Reads a lap from the text of its setting, `12 1931590862000 148.3`; undefined for any other text. */
export function lapOf(text: string): Lap | undefined {
  const [, row, since, seconds] = /^(\d{1,9}) (\d{1,15}) (\d+\.\d)$/.exec(text) ?? [];
  if (row === undefined || since === undefined || seconds === undefined) return undefined;
  return { row: Number(row), since: Number(since), seconds };
}

/** The text of a lap for the setting. */
export function lapText({ row, since, seconds }: Lap): string {
  return `${row} ${since} ${seconds}`;
}
