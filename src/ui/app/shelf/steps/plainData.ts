/** What the storage gave, as an object whose fields can be asked for. */
export function isRecord(value: unknown): value is Readonly<Record<string, unknown>> {
  return typeof value === 'object' && value !== null;
}

/** Whether a value is a list of which each part is right; one with a gap in it is none. */
export function isList(value: unknown, isRight: (part: unknown) => boolean): value is readonly unknown[] {
  return Array.isArray(value) && [...(value as unknown[])].every(isRight);
}
