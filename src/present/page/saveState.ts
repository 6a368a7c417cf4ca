/** Whether the work is kept on this machine, and since when. */
export type SaveState =
  | { readonly state: 'kept'; readonly at: Date }
  | { readonly state: 'failed'; readonly reason: string }
  | { readonly state: 'not yet' };

const texts = {
  kept: (time: string) => `Kept on this machine at ${time}`,
  failed: (reason: string) => `Not kept on this machine: ${reason}. Save a file before you leave.`,
} as const;

/**
 * What is said of it. Work that is not kept yet is spoken of as kept now, to hold the room that this takes.
 * @param locale that the time is written in
 */
export function saveStateText(kept: SaveState, now: Date, locale: string): string {
  if (kept.state === 'failed') return texts.failed(kept.reason);
  const at = kept.state === 'kept' ? kept.at : now;
  return texts.kept(at.toLocaleTimeString(locale, { hour: '2-digit', minute: '2-digit' }));
}
