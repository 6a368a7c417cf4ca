import { isList } from './steps/plainData';
import type { StepMark } from './steps/stepRecord';

/** A field of a file's record that differs from the file, or a text typed into it that could not be accepted. */
export type FieldText = readonly [row: number, column: string, text: string];

/** The columns of a sheet and its records, in its order, where they are not those of the file it was made from. */
export interface Layout {
  readonly columns: readonly string[];
  readonly rows: readonly number[];
}

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

/** What was done with a file since it was opened; written anew with each change. */
export interface ShelfWork {
  /** 3 where there is a layout, which a program that reads version 2 would lose. */
  readonly version: 2 | 3;
  readonly id: string;
  /** The file's name, and the model's title as it stands. */
  readonly name: string;
  readonly title: string;
  readonly shipped: string;
  /** Bytes of the file. */
  readonly size: number;
  /** Whether it was made by a change beside another tab that has the model. */
  readonly isCopy: boolean;
  readonly changes: readonly FieldText[];
  readonly layout?: Layout | undefined;
  readonly drafts: readonly FieldText[];
  readonly choice: Readonly<Record<string, string>>;
  /** Where this work stands among the kept steps of undo; they are checked when they are read. */
  readonly steps?: StepMark | undefined;
  /** Milliseconds since 1970. */
  readonly at: number;
}

/** A model as it was at one of its savings. */
export interface ShelfVersion {
  readonly version: 1;
  /** Of the model. */
  readonly id: string;
  /** 1 for the model's first version, then counting up. */
  readonly number: number;
  /** Milliseconds since 1970. */
  readonly at: number;
  readonly title: string;
  /** What was done since the file was opened, as in the model's work. */
  readonly changes: readonly FieldText[];
  readonly layout?: Layout | undefined;
  /** The words of its case and its timed batches, by the key of their setting; versions of before have none. */
  readonly own?: Readonly<Record<string, string>> | undefined;
}

/** A model with its file and its versions. */
export interface WholeModel {
  readonly file: ShelfFile;
  readonly work: ShelfWork;
  readonly versions: readonly ShelfVersion[];
}

type Unknown<T> = Partial<Record<keyof T, unknown>>;

function isFieldText(value: unknown): value is FieldText {
  const kinds = Array.isArray(value) ? value.map((part) => typeof part).join() : '';
  return kinds === 'number,string,string';
}

export function isFieldTexts(value: unknown): value is FieldText[] {
  return isList(value, isFieldText);
}

export function isLayout(value: unknown): value is Layout {
  if (typeof value !== 'object' || value === null) return false;
  const { columns, rows } = value as Unknown<Layout>;
  return isList(columns, (one) => typeof one === 'string') && isList(rows, (one) => typeof one === 'number');
}

export function isTexts(value: unknown): value is Record<string, string> {
  return typeof value === 'object' && value !== null && Object.values(value).every((text) => typeof text === 'string');
}

/** Whether what the storage gave is a file that this version of the program can read. */
export function isShelfFile(value: unknown): value is ShelfFile {
  if (typeof value !== 'object' || value === null) return false;
  const { version, id, name, shipped, opened, bytes } = value as Unknown<ShelfFile>;
  const texts = [id, name, shipped].every((text) => typeof text === 'string');
  return version === 2 && texts && typeof opened === 'number' && bytes instanceof Uint8Array;
}

/** Whether what the storage gave is work that this version of the program can read. */
export function isShelfWork(value: unknown): value is ShelfWork {
  if (typeof value !== 'object' || value === null) return false;
  const { version, id, name, title, shipped, size, isCopy, changes, layout, drafts, choice, at } =
    value as Unknown<ShelfWork>;
  return (
    (version === 2 || version === 3) &&
    (layout === undefined || isLayout(layout)) &&
    [id, name, title, shipped].every((text) => typeof text === 'string') &&
    typeof size === 'number' &&
    typeof isCopy === 'boolean' &&
    isFieldTexts(changes) &&
    isFieldTexts(drafts) &&
    isTexts(choice) &&
    typeof at === 'number'
  );
}

/** What is chosen of a shipped model in which nothing was changed: it has no entry of its own on the shelf. */
export function sampleId(shipped: string): string {
  return `sample ${shipped}`;
}

export function isSampleId(id: string): boolean {
  return id.startsWith('sample ');
}

/** Settings in which a person has written something of their own: words of the case, timed batches. */
const ownSettings = /^setting (?:case |trials$)/;

/** Whether there is work to lose. */
export function isOwnWork({
  changes,
  layout,
  drafts,
  choice,
}: Pick<ShelfWork, 'changes' | 'layout' | 'drafts' | 'choice'>): boolean {
  const hasWords = Object.entries(choice).some(([key, text]) => ownSettings.test(key) && text !== '');
  return changes.length > 0 || layout !== undefined || drafts.length > 0 || hasWords;
}
