/** A field of the sheet whose text differs from the file, or a text typed into it that could not be accepted. */
export type FieldText = readonly [row: number, column: string, text: string];

/** A file as it was opened; written once, with the first change. */
export interface ShelfFile {
  readonly version: 2;
  readonly id: string;
  readonly name: string;
  /** Its key among the shipped models; blank for a person's own file. */
  readonly shipped: string;
  /** When it was opened, in milliseconds since 1970. */
  readonly opened: number;
  readonly bytes: Uint8Array<ArrayBuffer>;
}

/** The work on a file since it was opened; written anew with each change. */
export interface ShelfWork {
  readonly version: 2;
  readonly id: string;
  /** The file's name, and the model's title as it stands. */
  readonly name: string;
  readonly title: string;
  readonly shipped: string;
  /** Size of the file in bytes. */
  readonly size: number;
  /** Whether it is a copy, made by a change while another page wrote the model. */
  readonly isCopy: boolean;
  readonly changes: readonly FieldText[];
  readonly drafts: readonly FieldText[];
  readonly choice: Readonly<Record<string, string>>;
  /** When it was written, in milliseconds since 1970. */
  readonly at: number;
}

type Unknown<T> = Partial<Record<keyof T, unknown>>;

function isFieldText(value: unknown): value is FieldText {
  const kinds = Array.isArray(value) ? value.map((part) => typeof part).join() : '';
  return kinds === 'number,string,string';
}

export function isFieldTexts(value: unknown): value is FieldText[] {
  return Array.isArray(value) && value.every(isFieldText);
}

export function isTexts(value: unknown): value is Record<string, string> {
  return typeof value === 'object' && value !== null && Object.values(value).every((text) => typeof text === 'string');
}

/** Whether a stored value is a file that this version of the program can read. */
export function isShelfFile(value: unknown): value is ShelfFile {
  if (typeof value !== 'object' || value === null) return false;
  const { version, id, name, shipped, opened, bytes } = value as Unknown<ShelfFile>;
  const texts = [id, name, shipped].every((text) => typeof text === 'string');
  return version === 2 && texts && typeof opened === 'number' && bytes instanceof Uint8Array;
}

/** Whether a stored value is work that this version of the program can read. */
export function isShelfWork(value: unknown): value is ShelfWork {
  if (typeof value !== 'object' || value === null) return false;
  const { version, id, name, title, shipped, size, isCopy, changes, drafts, choice, at } = value as Unknown<ShelfWork>;
  return (
    version === 2 &&
    [id, name, title, shipped].every((text) => typeof text === 'string') &&
    typeof size === 'number' &&
    typeof isCopy === 'boolean' &&
    isFieldTexts(changes) &&
    isFieldTexts(drafts) &&
    isTexts(choice) &&
    typeof at === 'number'
  );
}

/** Id for the choices made about an unchanged shipped model, which has no entry of its own on the shelf. */
export function sampleId(shipped: string): string {
  return `sample ${shipped}`;
}

export function isSampleId(id: string): boolean {
  return id.startsWith('sample ');
}

/** Settings that hold something a person has written: texts of the case, timed batches. */
const ownSettings = /^setting (?:case |trials$)/;

/** Whether the work holds anything that a person would miss. */
export function isOwnWork({ changes, drafts, choice }: Pick<ShelfWork, 'changes' | 'drafts' | 'choice'>): boolean {
  const hasWords = Object.entries(choice).some(([key, text]) => ownSettings.test(key) && text !== '');
  return changes.length > 0 || drafts.length > 0 || hasWords;
}
