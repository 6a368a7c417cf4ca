/** Whether the work is kept on this machine. */
export type SaveState =
  /** Nothing was changed yet. */
  | { readonly state: 'nothing' }
  /** Something is not on the disk yet. */
  | { readonly state: 'waiting' }
  /** All of it is, since then. */
  | { readonly state: 'kept'; readonly at: Date }
  | { readonly state: 'failed'; readonly reason: string }
  /** Another page writes this model, and what it writes is shown here. */
  | { readonly state: 'following' };

const texts = {
  nothing: 'Nothing changed yet',
  waiting: 'Not kept on this machine yet',
  kept: (time: string) => `Kept on this machine at ${time}`,
  failed: (reason: string) => `Not kept on this machine: ${reason}. Save a file before you leave.`,
  following: 'Also open elsewhere: what is changed there shows here. A change here makes a copy.',
} as const;

/**
 * What is said of it.
 * @param locale that the time is written in
 */
export function saveStateText(kept: SaveState, locale: string): string {
  if (kept.state === 'failed') return texts.failed(kept.reason);
  if (kept.state !== 'kept') return texts[kept.state];
  return texts.kept(kept.at.toLocaleTimeString(locale, { hour: '2-digit', minute: '2-digit' }));
}
