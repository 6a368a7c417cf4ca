import { readModel } from '../../../files/readModel';
import { buildModel } from '../../../model/buildModel';
import type { Model } from '../../../model/model';
import type { Sheet } from '../../../model/sheet';
import type { Origin } from '../store/snapshot';

/** What a person did with a file since it was opened. */
export interface KeptProgress {
  readonly version: 1;
  /** When the file was opened: tells one opening from another. */
  readonly opened: number;
  /** Fields that differ from the file. */
  readonly changes: readonly FieldText[];
  /** Texts that could not be accepted. */
  readonly drafts: readonly FieldText[];
  readonly choice: Readonly<Record<string, string>>;
  /** Milliseconds since 1970. */
  readonly at: number;
}

/** What is kept on this machine: the file as it was opened, and what was done with it. */
export interface KeptSession extends KeptProgress {
  readonly name: string;
  readonly shipped: string;
  readonly bytes: Uint8Array<ArrayBuffer>;
}

export type FieldText = readonly [row: number, column: string, text: string];

/** The fields in which a sheet differs from the one that it was made from. */
export function changesOf(from: Sheet, to: Sheet): FieldText[] {
  const before = new Map(from.rows.map((row) => [row.row, row]));
  return to.rows.flatMap((row) => {
    const old = before.get(row.row);
    if (old === row) return [];
    const changed = [...row.fields].filter(([column, text]) => old?.fields.get(column) !== text);
    return changed.map(([column, text]) => [row.row, column, text] as const);
  });
}

/** A sheet with some fields changed; the other rows stay the same objects. */
export function withChanges(sheet: Sheet, changes: readonly FieldText[]): Sheet {
  if (changes.length === 0) return sheet;
  const byRow = new Map<number, FieldText[]>();
  for (const change of changes) byRow.set(change[0], [...(byRow.get(change[0]) ?? []), change]);
  const rows = sheet.rows.map((row) => {
    const changed = byRow.get(row.row);
    if (changed === undefined) return row;
    return { ...row, fields: new Map([...row.fields, ...changed.map(([, column, text]) => [column, text] as const)]) };
  });
  return { ...sheet, rows };
}

/** Opens what was kept, with its changes. */
export function reopen({ name, shipped, opened, bytes, changes }: KeptSession): { model: Model; origin: Origin } {
  const { model, file } = readModel(bytes);
  const sheet = withChanges(file.sheet, changes);
  const origin = { name, shipped, opened, bytes, file };
  return { model: sheet === file.sheet ? model : buildModel(sheet, model.reading), origin };
}

function isFieldText(value: unknown): value is FieldText {
  const kinds = Array.isArray(value) ? value.map((part) => typeof part).join() : '';
  return kinds === 'number,string,string';
}

function isTexts(value: unknown): value is Record<string, string> {
  return typeof value === 'object' && value !== null && Object.values(value).every((text) => typeof text === 'string');
}

function isProgress(value: unknown): value is KeptProgress {
  if (typeof value !== 'object' || value === null) return false;
  const { version, opened, changes, drafts, choice, at } = value as Partial<Record<keyof KeptProgress, unknown>>;
  return (
    version === 1 &&
    typeof opened === 'number' &&
    Array.isArray(changes) &&
    changes.every(isFieldText) &&
    Array.isArray(drafts) &&
    drafts.every(isFieldText) &&
    isTexts(choice) &&
    typeof at === 'number'
  );
}

/** Whether what the browser's storage gave is a session that this program wrote. */
export function isSession(value: unknown): value is KeptSession {
  if (!isProgress(value)) return false;
  const { name, shipped, bytes } = value as Partial<Record<keyof KeptSession, unknown>>;
  return typeof name === 'string' && typeof shipped === 'string' && bytes instanceof Uint8Array;
}

function parsed(text: string): unknown {
  try {
    return JSON.parse(text) as unknown;
  } catch {
    return undefined;
  }
}

/** A session carried on to what was written when the page was left, if that is later and of the same opening. */
export function carriedOn(session: KeptSession, lastText: string): KeptSession {
  const last = parsed(lastText);
  return isProgress(last) && last.opened === session.opened && last.at > session.at ? { ...session, ...last } : session;
}
